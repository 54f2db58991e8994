import { randomUUID } from 'node:crypto';
import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
import { toolsRequired } from '../support/dtd.ts';
import { startHemfold } from './run-program.ts';
import { addressOf, paper, putPaper, type Served } from './served.ts';
import { postgresPlace, runSql } from './store/postgres-place.ts';
import { startPostgres } from './store/postgres-server.ts';

/*
 * Two services, each a process of its own, on one PostgreSQL: what one has stored the other has.
 */

const given = process.env.HEMFOLD_TEST_DATABASE_URL;
const server = await startPostgres();
const url = given ?? server?.url ?? '';
afterAll(() => server?.discard());

/** Two services that were started at the same time on an empty database. */
async function startTwo(databaseUrl = url): Promise<{ one: Served; other: Served; database: string }> {
  const place = await postgresPlace(databaseUrl);
  onTestFinished(() => place.discard());
  const start = () => startHemfold(['serve', '--port', '0'], { env: { DATABASE_URL: place.url } });
  const runs = [start(), start()] as const;
  const [one, other] = await Promise.all(runs.map(async (run) => ({ ...run, url: await addressOf(run) })));
  if (!one || !other) throw new Error('there are not two');
  return { one, other, database: place.url };
}

const papers = (service: Served, name: string) => `${service.url}/v1/stock/${name}`;

async function read(service: Served, name: string) {
  const reply = await fetch(papers(service, name));
  return { status: reply.status, tag: reply.headers.get('etag'), body: await reply.json() };
}

const put = (service: Served, name: string, number: number, headers = {}) =>
  putPaper(service.url, name, number, headers);

async function stopAll(...services: readonly Served[]): Promise<void> {
  for (const { child } of services) child.kill('SIGTERM');
  expect(await Promise.all(services.map(({ ended }) => ended))).toEqual(services.map(() => 0));
}

describe.skipIf(url === '' && !toolsRequired)(
  'two services on one PostgreSQL (skipped without HEMFOLD_TEST_DATABASE_URL or Debian’s postgresql)',
  { timeout: 180_000 },
  () => {
    test('start together on an empty database, whose tables are made once', async () => {
      const { one, other, database } = await startTwo();
      for (const service of [one, other]) {
        expect(service.errors()).toBe('');
        expect((await fetch(`${service.url}/health`)).status).toBe(200);
      }
      const steps = await runSql(database, 'select name from migration');
      expect(new Set(steps.map((step) => JSON.stringify(step))).size).toBe(steps.length);
      expect(steps.length).toBeGreaterThan(0);
      await stopAll(one, other);
    });

    test('read what the other has stored, changed and removed', async () => {
      const { one, other } = await startTwo();
      for (let turn = 0; turn < 20; turn++) {
        const [writer, reader] = turn % 2 === 0 ? [one, other] : [other, one];
        const written = await put(writer, 'lamp-blue', turn);
        expect(written.status).toBe(turn === 0 ? 201 : 200);
        const { tag, body } = await read(reader, 'lamp-blue');
        expect([tag, body]).toEqual([written.headers.get('etag'), paper(turn)]);
      }
      expect((await fetch(papers(other, 'lamp-blue'), { method: 'DELETE' })).status).toBe(204);
      expect((await read(one, 'lamp-blue')).status).toBe(404);
      await stopAll(one, other);
    });

    test('let one of two changes to the same version through, and refuse the other', async () => {
      const { one, other } = await startTwo();
      await put(one, 'lamp-blue', 0);
      for (let turn = 1; turn <= 20; turn++) {
        const { tag } = await read(turn % 2 === 0 ? one : other, 'lamp-blue');
        const match = { 'if-match': tag ?? 'none' };
        const replies = await Promise.all([
          put(one, 'lamp-blue', 2 * turn, match),
          put(other, 'lamp-blue', 2 * turn + 1, match),
        ]);
        expect(replies.map(({ status }) => status).toSorted()).toEqual([200, 412]);
        const winner = replies.findIndex(({ status }) => status === 200);
        for (const service of [one, other])
          expect((await read(service, 'lamp-blue')).body).toEqual(paper(2 * turn + winner));
      }
      await stopAll(one, other);
    });

    test('let one of many who all want to be the first be it', async () => {
      const { one, other } = await startTwo();
      for (let turn = 0; turn < 10; turn++) {
        const name = `paper-${turn}`;
        const replies = await Promise.all(
          [one, other, one, other, one, other].map((service, number) =>
            put(service, name, number, { 'if-none-match': '*' }),
          ),
        );
        expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 412, 412, 412, 412, 412]);
        const winner = replies.findIndex(({ status }) => status === 201);
        for (const service of [one, other]) expect((await read(service, name)).body).toEqual(paper(winner));
      }
      await stopAll(one, other);
    });

    test('go on when one is killed in the midst of writes, with all that either has acknowledged', async () => {
      const { one, other, database } = await startTwo();
      const acknowledged = new Map<string, number>();
      const counts = { one: 0, other: 0, after: 0 };
      async function write(service: Served, key: 'one' | 'other'): Promise<void> {
        for (let number = 0; counts.after < 40 && number < 5_000; number++) {
          const name = `paper-${key}-${randomUUID()}`;
          const reply = await put(service, name, number).catch(() => undefined);
          if (!reply) return;
          expect(reply.status, await reply.clone().text()).toBe(201);
          acknowledged.set(name, number);
          counts[key]++;
          if (key === 'other' && one.child.killed) counts.after++;
          if (counts.one >= 30 && !one.child.killed) one.child.kill('SIGKILL');
        }
      }
      await Promise.all([
        ...Array.from({ length: 4 }, () => write(one, 'one')),
        ...Array.from({ length: 4 }, () => write(other, 'other')),
      ]);
      expect(await one.ended).toBe(null);
      expect(counts.after).toBeGreaterThanOrEqual(40);
      for (const [name, number] of acknowledged)
        expect((await read(other, name)).body).toEqual(paper(number));
      const again = startHemfold(['serve', '--port', '0'], { env: { DATABASE_URL: database } });
      const back = { ...again, url: await addressOf(again) };
      const [last = 'none'] = [...acknowledged.keys()].slice(-1);
      expect((await read(back, last)).status).toBe(200);
      await stopAll(other, back);
    });
  },
);

describe.skipIf(server === undefined && (!toolsRequired || given !== undefined))(
  'two services whose PostgreSQL stops for a while (skipped without Debian’s postgresql)',
  { timeout: 180_000 },
  () => {
    test('are not ready meanwhile, and are again afterwards, with all that was stored', async () => {
      if (!server) throw new Error('there is no server to stop');
      const { one, other } = await startTwo(server.url);
      await put(one, 'lamp-blue', 1);
      await server.stop();
      for (const service of [one, other]) {
        const health = async () => (await fetch(`${service.url}/health`)).status;
        await expect.poll(health, { timeout: 20_000 }).toBe(503);
        expect((await fetch(`${service.url}/health/live`)).status).toBe(200);
        expect((await put(service, 'lamp-blue', 2)).status).toBe(503);
      }
      await server.start();
      for (const service of [one, other]) {
        const health = async () => (await fetch(`${service.url}/health`)).status;
        await expect.poll(health, { timeout: 20_000 }).toBe(200);
        expect((await read(service, 'lamp-blue')).body).toEqual(paper(1));
      }
      await stopAll(one, other);
    });
  },
);
