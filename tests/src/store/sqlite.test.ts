import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { sql } from 'kysely';
import { describe, expect, onTestFinished, test } from 'vitest';
import { openSqlite } from '../../../src/store/open-sqlite.ts';
import { openStore } from '../../../src/store/open-store.ts';
import { IncompatibleStore, StoreUnavailable } from '../../../src/store/store-errors.ts';
import { start } from '../run-program.ts';
import { tickingClock } from './place.ts';
import { sqlitePlace } from './sqlite-place.ts';
import { storeContract } from './store-contract.ts';

describe('the store on SQLite', () => {
  storeContract(sqlitePlace);
});

async function newPlace() {
  const place = await sqlitePlace();
  onTestFinished(() => place.discard());
  return place;
}

const mode = (path: string) => (statSync(path).mode & 0o777).toString(8);

/** Another program at the same file. */
function openFile(file: string): DatabaseSync {
  const database = new DatabaseSync(file);
  onTestFinished(() => {
    if (database.isOpen) database.close();
  });
  return database;
}

const put = (store: ReturnType<typeof openStore>, name = 'paper', body: unknown = 1) =>
  store.put('her', 'stock', name, body, 'any');

describe('the SQLite file', () => {
  test('is made on first use, for its owner alone', async () => {
    const { open, folder, dataDir, file } = await newPlace();
    const store = open();
    expect(readdirSync(folder)).toEqual([]);
    await put(store);
    expect([mode(join(folder, 'made')), mode(dataDir)]).toEqual(['700', '700']);
    expect(readdirSync(dataDir).toSorted()).toEqual([
      'hemfold.sqlite',
      'hemfold.sqlite-shm',
      'hemfold.sqlite-wal',
    ]);
    for (const name of readdirSync(dataDir)) expect(mode(join(dataDir, name))).toBe('600');
    expect(existsSync(file)).toBe(true);
  });

  test('is one file again after it was closed', async () => {
    const { open, dataDir } = await newPlace();
    const store = open();
    await put(store);
    await store.close();
    expect(readdirSync(dataDir)).toEqual(['hemfold.sqlite']);
  });

  test('is opened so that a commit is on the disk, and rows refer to rows', async () => {
    const { dataDir } = await newPlace();
    const db = await openSqlite(join(dataDir, 'durable.sqlite'));
    onTestFinished(() => db.destroy());
    const { rows } =
      await sql`select * from pragma_synchronous, pragma_foreign_keys, pragma_journal_mode`.execute(db);
    // synchronous: 2 is FULL, sqlite.org/pragma.html
    expect({ ...(rows[0] ?? {}) }).toEqual({ synchronous: 2, foreign_keys: 1, journal_mode: 'wal' });
  });

  test('keeps a log, whole, and only a hash of a secret', async () => {
    const { open, file } = await newPlace();
    const store = open();
    await store.put('her', 'designs', 'gift', 1, 'any');
    const share = await store.share('her', 'gift');
    if (typeof share === 'string') throw new Error(share);
    const database = openFile(file);
    expect({ ...database.prepare('pragma journal_mode').get() }).toEqual({ journal_mode: 'wal' });
    expect({ ...database.prepare('pragma integrity_check').get() }).toEqual({ integrity_check: 'ok' });
    expect(database.prepare('pragma foreign_key_check').all()).toEqual([]);
    const tables = database.prepare("select name from sqlite_schema where type = 'table'").all();
    const text = JSON.stringify(
      tables.map(({ name }) => database.prepare(`select * from "${String(name)}"`).all()),
    );
    expect(text).toContain(share.id);
    expect(text).not.toContain(share.secret);
  });
});

describe('a locked SQLite file', () => {
  test('makes changes unavailable and lets reading go on, until it is free', async () => {
    const { open, file } = await newPlace();
    const store = open({ patienceMs: 50 });
    await put(store);
    const other = openFile(file);
    other.exec('begin immediate');
    await expect(put(store, 'other')).rejects.toThrow(StoreUnavailable);
    await expect(put(store, 'other')).rejects.toThrow('locked');
    expect((await store.read('her', 'stock', 'paper'))?.body).toBe(1);
    other.exec('rollback');
    expect((await put(store, 'other')).outcome).toBe('created');
  });

  test('is waited for', async () => {
    const { open, file } = await newPlace();
    const store = open({ patienceMs: 30_000 });
    await put(store);
    const other = openFile(file);
    other.exec('begin immediate');
    const waiting = put(store, 'other');
    setTimeout(() => other.exec('rollback'), 100);
    expect((await waiting).outcome).toBe('created');
  });

  test('while it is opened makes the store unavailable, and it opens later', async () => {
    const { open, file, dataDir } = await newPlace();
    mkdirSync(dataDir, { recursive: true });
    const other = openFile(file);
    other.exec('begin exclusive');
    const store = open({ patienceMs: 50 });
    await expect(store.ready()).rejects.toThrow(StoreUnavailable);
    other.exec('rollback');
    await store.ready();
  });
});

describe('a SQLite file that cannot be used', () => {
  test('since its folder is a file', async () => {
    const { folder } = await newPlace();
    const dataDir = join(folder, 'taken');
    writeFileSync(dataDir, '');
    const store = openStore({ dataDir, databaseUrl: undefined }, tickingClock());
    const failure = await store.ready().catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(StoreUnavailable);
    expect(String(failure)).not.toContain(folder);
  });

  test('since it is something else', async () => {
    const { open, dataDir, file } = await newPlace();
    mkdirSync(dataDir, { recursive: true });
    writeFileSync(file, 'a shopping list, much longer than a database header would be '.repeat(40));
    await expect(open().ready()).rejects.toThrow(StoreUnavailable);
  });

  test('since a newer version wrote it', async () => {
    const { open, file } = await newPlace();
    const store = open();
    await store.ready();
    openFile(file).exec("insert into migration values ('999-later', '2099-01-01T00:00:00.000Z')");
    await expect(open().ready()).rejects.toThrow(IncompatibleStore);
  });
});

describe('a full disk', () => {
  const filler = fileURLToPath(new URL('./fill-store.ts', import.meta.url));

  test('makes changes unavailable, loses nothing, and lets reading go on', async () => {
    const { open, dataDir, file } = await newPlace();
    // a limit of the system on the size of the files that this process writes; in blocks of 512 bytes
    const run = start('sh', ['-c', `ulimit -f 1000 && exec "${process.execPath}" "${filler}"`], {
      env: { DATA_DIR: dataDir },
    });
    expect(await run.ended, run.errors()).toBe(0);
    const { stored, failure, readable } = JSON.parse(run.output()) as Record<string, unknown>;
    expect(failure).toBe('StoreUnavailable');
    expect(stored).toBeGreaterThan(3);
    expect(readable).toBe(stored);
    const { items } = await open().list('her', 'stock', { limit: 100 });
    expect(items).toHaveLength(Number(stored));
    expect({ ...openFile(file).prepare('pragma integrity_check').get() }).toEqual({ integrity_check: 'ok' });
  });

  const small = '/dev/shm'; // a file system in memory, on which root can mount a smaller one
  const canMount =
    process.getuid?.() === 0 &&
    existsSync(small) &&
    spawnSync('unshare', ['--mount', 'mount', '-t', 'tmpfs', '-o', 'size=1m', 'none', small]).status === 0;

  test.skipIf(!canMount)('of a real file system says that it is full (needs root and mounts)', async () => {
    const script = `mount -t tmpfs -o size=1m none ${small} && exec "${process.execPath}" "${filler}"`;
    const run = start('unshare', ['--mount', 'sh', '-c', script], { env: { DATA_DIR: join(small, 'data') } });
    expect(await run.ended, run.errors()).toBe(0);
    const { stored, failure, fault, readable } = JSON.parse(run.output()) as Record<string, unknown>;
    expect({ failure, fault, readable }).toEqual({
      failure: 'StoreUnavailable',
      fault: 'full',
      readable: stored,
    });
  });
});
