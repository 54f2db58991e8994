import { Client } from 'pg';
import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
import { IncompatibleStore, StoreUnavailable } from '../../../src/store/store-errors.ts';
import { toolsRequired } from '../../support/dtd.ts';
import { postgresPlace, runSql } from './postgres-place.ts';
import { startPostgres } from './postgres-server.ts';
import { storeContract } from './store-contract.ts';

/** A server whose user may make databases; HEMFOLD_TEST_DATABASE_URL, or one that is started here. */
const given = process.env.HEMFOLD_TEST_DATABASE_URL;
const server = await startPostgres();
const url = given ?? server?.url ?? '';
afterAll(() => server?.discard());

describe.skipIf(url === '' && !toolsRequired)(
  'the store on PostgreSQL (skipped without HEMFOLD_TEST_DATABASE_URL or Debian’s postgresql)',
  () => {
    test('has a server', () => {
      expect(url).not.toBe('');
    });

    describe('by contract', () => {
      storeContract(() => postgresPlace(url));
    });

    async function newPlace() {
      const place = await postgresPlace(url);
      onTestFinished(() => place.discard());
      return place;
    }
    const put = (store: ReturnType<Awaited<ReturnType<typeof newPlace>>['open']>, name = 'paper') =>
      store.put('her', 'stock', name, 1, 'any');

    test('sorts names by code points whatever the language of the database', async () => {
      const place = await newPlace();
      await place.open().ready();
      const rows = await runSql(
        place.url,
        "select distinct collation_name from information_schema.columns where column_name in ('owner', 'kind', 'name') and table_name in ('shelf', 'item', 'revision', 'share')",
      );
      expect(rows).toEqual([{ collation_name: 'C' }]);
    });

    test('keeps only a hash of a secret', async () => {
      const place = await newPlace();
      const store = place.open();
      await store.put('her', 'designs', 'gift', 1, 'any');
      const share = await store.share('her', 'gift');
      if (typeof share === 'string') throw new Error(share);
      const text = JSON.stringify(await runSql(place.url, 'select * from share'));
      expect(text).toContain(share.id);
      expect(text).not.toContain(share.secret);
    });

    test('goes on after its connections were ended', async () => {
      const place = await newPlace();
      const store = place.open();
      await put(store);
      const own = "datname = current_database() and application_name = 'hemfold'";
      const ended = await runSql(
        place.url,
        `select pg_terminate_backend(pid) from pg_stat_activity where ${own}`,
      );
      expect(ended.length).toBeGreaterThan(0);
      const outcomes: unknown[] = [];
      for (let attempt = 0; attempt < 20 && outcomes.at(-1) !== 'created'; attempt++)
        outcomes.push(
          await put(store, 'other').then(
            ({ outcome }) => outcome,
            (error: unknown) => (error instanceof StoreUnavailable ? error.name : error),
          ),
        );
      expect(outcomes.at(-1)).toBe('created');
      for (const outcome of outcomes.slice(0, -1)) expect(outcome).toBe('StoreUnavailable');
    });

    test('waits no longer than it should for a lock that another holds', async () => {
      const place = await newPlace();
      const store = place.open({ patienceMs: 0 });
      await put(store);
      const other = new Client({ connectionString: place.url });
      await other.connect();
      await other.query('begin; lock table shelf in exclusive mode');
      await expect(put(store, 'other')).rejects.toThrow('locked');
      await other.end();
      expect((await put(store, 'other')).outcome).toBe('created');
    });

    test('is refused where a newer version wrote it', async () => {
      const place = await newPlace();
      await place.open().ready();
      await runSql(place.url, "insert into migration values ('999-later', '2099-01-01T00:00:00.000Z')");
      await expect(place.open().ready()).rejects.toThrow(IncompatibleStore);
    });

    test('is refused in another encoding than UTF-8', async () => {
      const place = await newPlace();
      const name = new URL(place.url).pathname.slice(1);
      await runSql(url, `drop database ${name}`);
      await runSql(url, `create database ${name} template template0 encoding 'LATIN1' locale 'C'`);
      await expect(place.open().ready()).rejects.toThrow('UTF8');
    });

    test('is unavailable where there is no such database, and says nothing of its address', async () => {
      const place = await newPlace();
      await runSql(url, `drop database ${new URL(place.url).pathname.slice(1)}`);
      const failure = await place
        .open()
        .ready()
        .catch((error: unknown) => error);
      expect(failure).toBeInstanceOf(StoreUnavailable);
      expect(String(failure)).not.toContain('hemfold_test');
      await runSql(url, `create database ${new URL(place.url).pathname.slice(1)}`);
    });
  },
);

describe.skipIf(server === undefined && (!toolsRequired || given !== undefined))(
  'a PostgreSQL server that stops (skipped without Debian’s postgresql)',
  () => {
    test('makes the store unavailable until it is back, and nothing is lost', async () => {
      if (!server) throw new Error('there is no server to stop');
      const place = await postgresPlace(server.url);
      const [store, unopened] = [place.open(), place.open()];
      const { stored } = await store.put('her', 'designs', 'gift', 1, 'any');
      await server.stop();
      await expect(store.read('her', 'designs', 'gift')).rejects.toThrow(StoreUnavailable);
      await expect(store.put('her', 'designs', 'gift', 2, 'any')).rejects.toThrow('cannot be reached');
      await expect(unopened.ready()).rejects.toThrow(StoreUnavailable);
      await server.start();
      expect(await store.read('her', 'designs', 'gift')).toEqual(stored);
      await unopened.ready();
      await place.discard();
    });
  },
);
