import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { fingerprint, projectFolder } from '../../src/page/build/project.mjs';
import { build } from '../src/build.ts';
import { ensurePage } from './built.ts';

let folder: string;
beforeAll(async () => {
  folder = await ensurePage();
}, 120_000);

const read = (path: string): string => readFileSync(join(folder, path), 'utf8');
const assets = (): string[] =>
  readdirSync(join(folder, 'assets')).filter((name) => /\.(?:js|css|svg|woff2?)$/u.test(name));

/** Files that a file loads as soon as it is loaded: not what it only names to load later. */
function loadedBy(path: string): string[] {
  const text = read(path);
  const inPage = [...text.matchAll(/(?:src|href)="\.\/(assets\/[^"]+)"/gu)];
  const inScript = [...text.matchAll(/(?:from|import)\s*["']\.\/([^"']+\.js)["']/gu)];
  // a worker starts with the page
  const workers = [...text.matchAll(/new Worker\([^)]*?["'`][^"'`]*?([\w.-]+\.js)["'`]/gu)];
  return [
    ...inPage.map(([, file = '']) => file),
    ...[...inScript, ...workers].map(([, file = '']) => `assets/${file}`),
  ];
}

function loadedAtOnce(): string[] {
  const found = new Set(['index.html']);
  for (const file of found) for (const next of loadedBy(file)) found.add(next);
  return [...found];
}

describe('the built page', () => {
  test('weighs at most 150 kB by gzip before the fold in space is asked for', () => {
    const files = loadedAtOnce();
    expect(files.some((file) => file.includes('worker'))).toBe(true);
    expect(files.some((file) => file.endsWith('.css'))).toBe(true);
    const weights = files.map(
      (file) => [file, gzipSync(readFileSync(join(folder, file)), { level: 9 }).length] as const,
    );
    const bytes = weights.reduce((sum, [, weight]) => sum + weight, 0);
    expect(bytes, weights.map((each) => each.join(' ')).join(', ')).toBeLessThanOrEqual(150_000);
  });

  test('loads no other language, no clipping and no space with itself', () => {
    const later = assets().filter(
      (name) => name.endsWith('.js') && !loadedAtOnce().includes(`assets/${name}`),
    );
    for (const name of ['de', 'fr', 'es', 'stage'])
      expect(
        later.some((file) => file.startsWith(`${name}-`)),
        name,
      ).toBe(true);
  });

  test('has no script or style within its HTML', () => {
    const html = read('index.html');
    expect(html).not.toMatch(/<style|\sstyle=|\son\w+=|<script(?![^>]*\ssrc=)/u);
  });

  test('is compressed as it is', () => {
    for (const name of assets().filter((each) => !each.endsWith('.woff'))) {
      const plain = readFileSync(join(folder, 'assets', name));
      expect(gunzipSync(readFileSync(join(folder, 'assets', `${name}.gz`))).equals(plain), name).toBe(true);
      expect(
        brotliDecompressSync(readFileSync(join(folder, 'assets', `${name}.br`))).equals(plain),
        name,
      ).toBe(true);
    }
  });

  test('is built anew when a source has changed', () => {
    const before = fingerprint();
    const added = join(projectFolder, 'src', 'page', 'style', 'fingerprint-probe.css');
    writeFileSync(added, '/* added by a test */\n');
    try {
      expect(fingerprint()).not.toBe(before);
    } finally {
      rmSync(added);
    }
    expect(fingerprint()).toBe(before);
  });
});

describe('the service', () => {
  test('sends the page with a tag, to be asked for again, under a strict policy', async () => {
    const app = await build();
    const reply = await app.inject({ url: '/' });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'cache-control': 'no-cache',
      vary: expect.stringContaining('accept-encoding'),
    });
    expect(reply.body).toBe(read('index.html'));
    const policy = String(reply.headers['content-security-policy']);
    expect(policy).toContain("script-src 'self'");
    expect(policy).toContain("style-src 'self'");
    expect(policy).not.toContain('unsafe');
    const again = await app.inject({ url: '/', headers: { 'if-none-match': String(reply.headers.etag) } });
    expect(again.statusCode).toBe(304);
    expect((await app.inject({ method: 'HEAD', url: '/' })).headers.etag).toBe(reply.headers.etag);
  });

  test('sends what the page loads for ever, as its client reads it', async () => {
    const app = await build();
    for (const name of assets()) {
      const url = `/assets/${name}`;
      const plain = await app.inject({ url });
      expect(plain.statusCode, name).toBe(200);
      expect(plain.headers['cache-control']).toBe('public, max-age=31536000, immutable');
      expect(plain.headers.etag).toMatch(/^"[^"]+"$/u);
      expect(plain.rawPayload.equals(readFileSync(join(folder, 'assets', name)))).toBe(true);
    }
    const worker = assets().find((each) => each.startsWith('worker-')) ?? '';
    const policy = (await app.inject({ url: `/assets/${worker}` })).headers['content-security-policy'];
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
    const name = assets().find((each) => each.endsWith('.css')) ?? '';
    const url = `/assets/${name}`;
    const sent = async (accept: string) =>
      (await app.inject({ url, headers: { 'accept-encoding': accept } })).headers;
    expect((await sent('gzip, deflate, br'))['content-encoding']).toBe('br');
    expect((await sent('gzip;q=0.8'))['content-encoding']).toBe('gzip');
    expect((await sent('br;q=0, identity'))['content-encoding']).toBeUndefined();
    expect((await sent('br')).etag).not.toBe((await sent('identity')).etag);
  });

  test.each([
    '/assets/none.js',
    '/assets/..%2findex.html',
    '/assets/%2e%2e%2fmade-from.txt',
    '/assets/.hidden',
    '/assets/',
    '/assets/a/b.js',
  ])('sends nothing else, as for %s', async (url) => {
    const app = await build();
    const reply = await app.inject({ url });
    expect([400, 404]).toContain(reply.statusCode);
    expect(reply.headers['content-type']).toContain('application/problem+json');
  });
});
