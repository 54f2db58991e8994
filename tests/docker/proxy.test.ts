import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
import { runHemfold, startHemfold } from '../src/run-program.ts';
import { addressOf, paper, type Served } from '../src/served.ts';
import { postgresPlace } from '../src/store/postgres-place.ts';
import { startPostgres } from '../src/store/postgres-server.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { toolsRequired } from '../support/dtd.ts';
import { type Answer, ask, type Question } from './ask.ts';
import { haproxy, makeCertificate, startProxy } from './haproxy.ts';

/*
 * What docker/compose.postgres.yaml starts, without containers: docker/haproxy.cfg in a real HAProxy, in front of two
 * services of one group on one PostgreSQL.
 */

const server = await startPostgres();
afterAll(() => server?.discard());

async function startGroup() {
  const folder = await tempFolder();
  const place = await postgresPlace(server?.url ?? '');
  onTestFinished(() => place.discard());
  const env = { DATABASE_URL: place.url, GROUP: 'true', TRUST_PROXY: '1', LOG_LEVEL: 'info' };
  const added = await runHemfold(['members', 'add', 'Tilda', '--scopes', 'read,write,admin'], { env });
  const [token = 'none'] = /hemfold_\w+_[\w-]+/.exec(added.output) ?? [];
  const startOne = async (port = '0'): Promise<Served> => {
    const run = startHemfold(['serve', '--port', port], { env });
    return { ...run, url: await addressOf(run) };
  };
  const [one, two] = await Promise.all([startOne(), startOne()]);
  const certificate = await makeCertificate(folder);
  const ca = await readFile(certificate, 'utf8');
  const pem = ca + (await readFile(join(folder, 'key.pem'), 'utf8'));
  const proxy = await startProxy(folder, { one: one.url, two: two.url, pem });
  const get = (path: string, question: Question = {}): Promise<Answer> =>
    ask(proxy.https + path, { ca, ...question });
  const signed = { authorization: `Bearer ${token}` };
  const put = (name: string, number: number) =>
    get(`/v1/stock/${name}`, {
      method: 'PUT',
      headers: { ...signed, 'content-type': 'application/json' },
      body: JSON.stringify(paper(number)),
    });
  await expect.poll(async () => (await get('/health')).status, { timeout: 30_000 }).toBe(200);
  const restart = ({ url }: Served) => startOne(new URL(url).port);
  return { one, two, proxy, ca, token, signed, get, put, restart };
}

/** What a service has logged so far. */
const logOf = (...runs: readonly { output(): string; errors(): string }[]) =>
  runs.map((run) => run.output() + run.errors()).join('');

describe.skipIf((haproxy === undefined || server === undefined) && !toolsRequired)(
  'two services behind the proxy of docker/ (skipped without Debian’s haproxy and postgresql)',
  { timeout: 240_000 },
  () => {
    test('are reached over TLS alone, by whom the proxy says, and keep their numbers inside', async () => {
      expect(haproxy, 'haproxy').toBeDefined();
      const { one, two, proxy, ca, token, signed, get } = await startGroup();

      const plain = await fetch(`${proxy.http}/v1/sizes?tide=low`, { redirect: 'manual' });
      expect(plain.status).toBe(308);
      expect(plain.headers.get('location')).toBe(
        `${proxy.http.replace('http:', 'https:')}/v1/sizes?tide=low`,
      );
      await expect(ask(`${proxy.https}/health`, {}), 'without the certificate').rejects.toThrow(
        /self-signed/,
      );
      await expect(get('/health', { minVersion: 'TLSv1', maxVersion: 'TLSv1.1' })).rejects.toThrow();
      expect((await get('/health', { maxVersion: 'TLSv1.2' })).status).toBe(200);
      expect((await get('/health')).headers['strict-transport-security']).toBe('max-age=31536000');

      expect((await get('/v1/me')).status).toBe(401);
      const spoofed = {
        ...signed,
        'x-forwarded-for': '203.0.113.9',
        forwarded: 'for=203.0.113.9',
        'x-forwarded-proto': 'http',
        'x-forwarded-host': 'elsewhere.example',
      };
      const me = await get('/v1/me', { headers: spoofed });
      expect([me.status, me.body]).toEqual([200, expect.stringContaining('Tilda')]);
      await expect
        .poll(() => logOf(one, two), { timeout: 10_000 })
        .toMatch(/"url":"\/v1\/me","ip":"127\.0\.0\.1"/);
      expect(logOf(one, two)).not.toContain('203.0.113.9');

      const metrics = ['/metrics', '/metrics/', '/METRICS', '//metrics', '/%6Detrics', '/metrics?a=1'];
      for (const path of metrics) {
        const reply = await get(path, { headers: signed });
        expect([path, reply.status, reply.headers['content-type']]).toEqual([
          path,
          404,
          'application/problem+json',
        ]);
        JSON.parse(reply.body);
      }
      const direct = (headers: Record<string, string>) => fetch(`${one.url}/metrics`, { headers });
      expect((await direct({})).status).toBe(401);
      expect((await direct(signed)).status).toBe(200);

      const form = (origin: string) =>
        get('/sign-in', {
          method: 'POST',
          headers: { 'content-type': 'application/x-www-form-urlencoded', origin },
          body: `token=${token}`,
        });
      expect((await form('https://elsewhere.example')).status).toBe(403);
      const signIn = await form(proxy.https);
      expect(signIn.status).toBe(303);
      const [cookie = ''] = signIn.headers['set-cookie'] ?? [];
      expect(cookie).toMatch(/^__Host-hemfold-session=[^;]+; .*Secure/);
      const [pair = ''] = cookie.split(';');
      for (let turn = 0; turn < 4; turn++)
        expect((await get('/v1/me', { headers: { cookie: pair } })).status).toBe(200);

      const large = JSON.stringify({ style: 'x'.repeat(300 * 1024) });
      const post = { method: 'POST', headers: { ...signed, 'content-type': 'application/json' } };
      const refused = await get('/v1/folders/plan', { ...post, body: large });
      expect([refused.status, JSON.parse(refused.body)]).toMatchObject([413, { status: 413 }]);
      const huge = { ...post, headers: { ...post.headers, 'content-length': String(65 * 1024 * 1024) } };
      const stopped = await get('/v1/restore', { ...huge, body: '{}' });
      expect([stopped.status, JSON.parse(stopped.body)]).toMatchObject([413, { status: 413 }]);

      await get('/v1/shared/swordfish?tide=seahorse');
      await expect.poll(proxy.output, { timeout: 10_000 }).toMatch(/GET 404/);
      expect(logOf(proxy)).not.toMatch(/swordfish|seahorse|hemfold_/);
      expect(logOf(one, two)).not.toMatch(/swordfish/);
      expect(ca).toContain('BEGIN CERTIFICATE');
    });

    test('answer every request while one after the other is stopped and started again', async () => {
      const { one, two, get, put, signed, restart } = await startGroup();
      const failures: unknown[] = [];
      let asked = 0;
      let over = false;
      async function traffic(worker: number): Promise<void> {
        for (let number = 0; !over && number < 5_000; number++) {
          const name = `paper-${worker}-${number}`;
          const replies = [await put(name, number), await get(`/v1/stock/${name}`, { headers: signed })];
          asked += replies.length;
          if (replies.map(({ status }) => status).join() !== '201,200') failures.push(replies);
        }
      }
      const working = Promise.all([1, 2].map(traffic));
      for (const service of [one, two]) {
        service.child.kill('SIGTERM');
        expect(await service.ended).toBe(0);
        const seen = asked;
        await expect.poll(() => asked, { timeout: 60_000 }).toBeGreaterThan(seen + 10);
        const again = await restart(service);
        await expect
          .poll(async () => (await fetch(`${again.url}/health`)).status, { timeout: 30_000 })
          .toBe(200);
        // until the proxy, which looks every two seconds, sends it work again
        await expect.poll(() => logOf(again), { timeout: 60_000 }).toContain('/v1/stock/');
      }
      over = true;
      await working;
      expect(failures).toEqual([]);
      expect(asked).toBeGreaterThan(40);
    });

    test('go on without the one that was killed; without any the proxy says when to ask again', async () => {
      const { one, two, get, put, signed } = await startGroup();
      for (let number = 0; number < 10; number++)
        expect((await put(`paper-${number}`, number)).status).toBe(201);
      one.child.kill('SIGKILL');
      await one.ended;
      for (let number = 0; number < 30; number++) {
        const reply = await get(`/v1/stock/paper-${number % 10}`, { headers: signed });
        expect([reply.status, JSON.parse(reply.body)]).toEqual([200, paper(number % 10)]);
      }
      two.child.kill('SIGKILL');
      await two.ended;
      const reply = await get('/health');
      expect([reply.status, reply.headers['retry-after'], reply.headers['content-type']]).toEqual([
        503,
        '5',
        'application/problem+json',
      ]);
      expect(JSON.parse(reply.body)).toMatchObject({ status: 503 });
    });
  },
);
