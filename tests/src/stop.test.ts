import { connect } from 'node:net';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, onTestFinished, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { openStore, sqliteFileName } from '../../src/store/open-store.ts';
import { paper, putPaper, type Served, serve } from './served.ts';
import { tempFolder } from './temp-folder.ts';

/** A request whose body is sent in parts; `reply` is all that came back once the other side has ended. */
function slowRequest(url: string, body: string) {
  const { hostname, port } = new URL(url);
  const socket = connect(Number(port), hostname);
  onTestFinished(() => void socket.destroy());
  socket.write(
    `POST /v1/folders/plan HTTP/1.1\r\nhost: ${hostname}\r\ncontent-type: application/json\r\ncontent-length: ${Buffer.byteLength(body)}\r\n\r\n`,
  );
  socket.write(body.slice(0, 20));
  let received = '';
  socket.setEncoding('utf8').on('data', (part: string) => {
    received += part;
  });
  const reply = new Promise<string>((resolve, reject) => {
    socket.once('error', reject);
    socket.once('close', () => resolve(received));
  });
  return { finish: () => socket.write(body.slice(20)), reply };
}

/** Resolves once nothing new is accepted. */
const refusing = ({ url }: Served) =>
  expect
    .poll(
      () =>
        fetch(`${url}/health/live`, { headers: { connection: 'close' } }).then(
          () => 'accepts',
          () => 'refuses',
        ),
      { timeout: 10_000 },
    )
    .toBe('refuses');

describe('SIGTERM', { timeout: 120_000 }, () => {
  test('lets a request in hand be finished and answered', async () => {
    const service = await serve({ DATA_DIR: await tempFolder() });
    const request = slowRequest(service.url, JSON.stringify(firstSpec));
    await fetch(`${service.url}/health`); // by now the head of the slow one has been read
    service.child.kill('SIGTERM');
    await refusing(service);
    request.finish();
    const [head = '', body = ''] = (await request.reply).split('\r\n\r\n');
    expect(head).toMatch(/^HTTP\/1\.1 200 OK\r\n/);
    expect(head).toMatch(/\r\nconnection: close(?:\r\n|$)/i);
    expect(JSON.parse(body)).toMatchObject({ style: firstSpec.style });
    expect(await service.ended).toBe(0);
  });

  test('cuts off a request that is never finished, and ends with 0', async () => {
    const service = await serve({ DATA_DIR: await tempFolder() });
    const request = slowRequest(service.url, JSON.stringify(firstSpec));
    await fetch(`${service.url}/health`);
    service.child.kill('SIGTERM');
    expect(await request.reply).not.toContain('HTTP/1.1 200');
    expect(await service.ended).toBe(0);
  });

  test('lets a write be finished that waits for the store', async () => {
    const folder = await tempFolder();
    const service = await serve({ DATA_DIR: folder });
    const other = new DatabaseSync(join(folder, sqliteFileName));
    onTestFinished(() => other.close());
    other.exec('begin immediate');
    const write = putPaper(service.url, 'paper-7', 7);
    await pause(300); // the write waits for the lock now; if not, it is refused below
    service.child.kill('SIGTERM');
    await refusing(service);
    other.exec('commit');
    expect((await write).status).toBe(201);
    expect(await service.ended).toBe(0);
    expect(await storedNames(folder)).toEqual(['paper-7']);
  });

  test('in the midst of writes loses none that was acknowledged', async () => {
    const folder = await tempFolder();
    const service = await serve({ DATA_DIR: folder });
    const acknowledged: string[] = [];
    const write = async (writer: number) => {
      for (let number = 0; number < 2_000; number++) {
        const name = `paper-${writer}-${number}`;
        const reply = await putPaper(service.url, name, number).catch(() => undefined);
        if (!reply) return;
        expect(reply.status).toBe(201);
        acknowledged.push(name);
        if (acknowledged.length === 40) service.child.kill('SIGTERM');
      }
    };
    await Promise.all([1, 2, 3, 4].map(write));
    expect(await service.ended).toBe(0);
    expect(acknowledged.length).toBeGreaterThanOrEqual(40);
    const stored = await storedNames(folder);
    expect(acknowledged.filter((name) => !stored.includes(name))).toEqual([]);
  });
});

async function storedNames(dataDir: string): Promise<readonly string[]> {
  const store = openStore({ dataDir, databaseUrl: undefined }, () => new Date());
  try {
    const names: string[] = [];
    for (let after: string | undefined = ''; after !== undefined; ) {
      const page = await store.list('home', 'stock', { after, limit: 100 });
      for (const { name, body } of page.items) {
        expect(body).toMatchObject(paper(Number(name.split('-').at(-1))));
        names.push(name);
      }
      after = page.next;
    }
    return names;
  } finally {
    await store.close();
  }
}
