/*
 * OWASP API Security Top 10 (2023), API7: the service fetches nothing, wherever a URL stands in what it is sent.
 */
import { subscribe, unsubscribe } from 'node:diagnostics_channel';
import dns from 'node:dns';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { build } from '../src/build.ts';
import { asking, buildGroup } from '../src/group.ts';
import { folderSpec as spec } from './things.ts';

/** Channels of Node on which every connection that is begun is told, by sockets and by fetch. */
const channels = ['net.client.socket', 'undici:request:create', 'http.client.request.start'];

/** Whatever leaves this process from now on. */
function watchOutgoing(): readonly string[] {
  const seen: string[] = [];
  for (const channel of channels) {
    const note = () => void seen.push(channel);
    subscribe(channel, note);
    onTestFinished(() => {
      unsubscribe(channel, note);
    });
  }
  vi.spyOn(dns, 'lookup').mockImplementation(((...given: unknown[]) => {
    seen.push('lookup');
    const done = given.at(-1);
    if (typeof done === 'function') done(new Error('nothing is looked up in this test'));
  }) as unknown as typeof dns.lookup);
  return seen;
}

/** Nothing listens at these addresses; their ports are none that `fetch` itself refuses. */
const urls = [
  'http://127.0.0.1:40404/latest/meta-data/',
  'http://169.254.169.254/latest/meta-data/',
  'file:///etc/passwd',
  '//127.0.0.1:40404/x',
  'http://[::1]:40404/',
  'data:text/plain,x',
];

describe('a URL', () => {
  test.each(urls)('%s at any place in a request is not fetched', async (url) => {
    const { app, keeper, ask } = await buildGroup();
    const seen = watchOutgoing();
    const bodies = [
      { ...spec, stock: url },
      { ...spec, stock: { ...spec.stock, name: url } },
      { ...spec, cutter: url, convention: url },
      { ...spec, $ref: url, $schema: url, '@context': url },
      { $ref: url },
    ];
    for (const body of bodies)
      for (const route of ['plan', 'svg', 'fold', 'views', 'possible'])
        await keeper.ask('POST', `/v1/folders/${route}`, body);
    await keeper.ask('PUT', '/v1/designs/gift', { title: url, notes: url, credit: url, licence: url, spec });
    await keeper.ask('PUT', '/v1/stock/blue', { size: 'craft-12x12', notes: url, faces: { outside: url } });
    await keeper.ask('PUT', `/v1/stock/${encodeURIComponent(url)}`, { size: 'craft-12x12' });
    await keeper.ask('POST', '/v1/members/Keeper/tokens', { scopes: ['read'], note: url });
    const { secret } = (await keeper.ask('POST', '/v1/designs/gift/shares', {})).json();
    for (const path of ['', '/plan', '/svg', '/views']) await ask('GET', `/v1/shared/${secret}${path}`);
    await ask('GET', `/v1/shared/${secret}/svg?convention=${encodeURIComponent(url)}`);
    await ask('GET', '/v1/me', undefined, {
      host: '127.0.0.1:40404',
      referer: url,
      origin: url,
      'x-forwarded-host': '127.0.0.1:40404',
      'x-forwarded-for': '127.0.0.1',
      forwarded: 'host=127.0.0.1:40404',
    });
    await app.inject({ method: 'GET', url: `/v1/sizes?callback=${encodeURIComponent(url)}` });
    expect(seen).toEqual([]);
  });

  test('that a route did fetch would be seen', async () => {
    const app = await build(
      {},
      {
        extend: (bare) => {
          bare.post('/fetching', async ({ body }) => {
            const { url } = body as { url: string };
            return fetch(url).then(
              () => 'got it',
              () => 'did not get it',
            );
          });
        },
      },
    );
    const seen = watchOutgoing();
    const reply = await asking(app)('POST', '/fetching', { url: urls[0] });
    expect(reply.body).toBe('did not get it');
    expect(seen).toContain('undici:request:create');
    await asking(app)('POST', '/fetching', { url: 'http://nowhere.invalid/' });
    expect(seen).toContain('lookup');
  });
});

describe('the program', () => {
  /** What would reach other machines; PostgreSQL's driver, whose address the settings alone give, is a package. */
  const reaches = (text: string) =>
    /\bfetch\(|\bfrom '(?:node:)?(?:https?|http2|dgram|dns|dns\/promises|tls|undici)'|\bconnect\(|\bcreateConnection\(|\bnew WebSocket\(|\bEventSource\(/u.test(
      text,
    );
  /** Connects to the inspector of its own process alone. */
  const known = ['src/quiet/release-memory.ts'];

  test('has no line that reaches another machine', () => {
    const root = join(import.meta.dirname, '../..');
    const files = globSync('{shared,src,routes}/**/*.ts', { cwd: root }).filter(
      (file) => !file.startsWith('src/page/'), // runs in browsers
    );
    expect(files.length).toBeGreaterThan(150);
    const guilty = files.filter((file) => reaches(readFileSync(join(root, file), 'utf8')));
    expect(guilty.filter((file) => !known.includes(file))).toEqual([]);
    expect(reaches("import { request } from 'node:https';")).toBe(true);
    expect(reaches('await fetch(spec.url)')).toBe(true);
  });
});
