import { afterAll, describe, expect, onTestFinished, test } from 'vitest';
import { commandLine } from '../../../src/members/audit.ts';
import { toolsRequired } from '../../support/dtd.ts';
import { postgresRecords, sqliteRecords } from '../members/records-place.ts';
import { startPostgres } from '../store/postgres-server.ts';
import { archiveContract, everything, fill } from './archive-contract.ts';
import { exported, sourceOf } from './archive-text.ts';

const given = process.env.HEMFOLD_TEST_DATABASE_URL;
const server = given === undefined ? await startPostgres() : undefined;
const url = given ?? server?.url ?? '';
afterAll(() => server?.discard());

describe.skipIf(url === '' && !toolsRequired)(
  'archives of PostgreSQL (skipped without HEMFOLD_TEST_DATABASE_URL or Debian’s postgresql)',
  () => {
    test('have a server', () => {
      expect(url).not.toBe('');
    });

    archiveContract(() => postgresRecords(url));

    test('move everything from SQLite to PostgreSQL and back', async () => {
      const places = [await sqliteRecords(), await postgresRecords(url), await sqliteRecords()];
      onTestFinished(async () => {
        for (const place of places) await place.discard();
      });
      const [first, second, third] = places.map((place) => place.open());
      if (!first || !second || !third) throw new Error('no records');
      const { owner } = await fill(first);
      const options = { replace: false, needsAdmin: true };
      await second.archive.restore(commandLine, sourceOf(await exported(first.archive)), options);
      await third.archive.restore(commandLine, sourceOf(await exported(second.archive)), options);
      expect(await everything(second, owner)).toEqual(await everything(first, owner));
      expect(await everything(third, owner)).toEqual(await everything(first, owner));
    });
  },
);
