import { afterAll, describe, expect, test } from 'vitest';
import { toolsRequired } from '../../support/dtd.ts';
import { startPostgres } from '../store/postgres-server.ts';
import { membersContract } from './members-contract.ts';
import { postgresRecords } from './records-place.ts';

const given = process.env.HEMFOLD_TEST_DATABASE_URL;
const server = given === undefined ? await startPostgres() : undefined;
const url = given ?? server?.url ?? '';
afterAll(() => server?.discard());

describe.skipIf(url === '' && !toolsRequired)(
  'members on PostgreSQL (skipped without HEMFOLD_TEST_DATABASE_URL or Debian’s postgresql)',
  () => {
    test('have a server', () => {
      expect(url).not.toBe('');
    });

    membersContract(() => postgresRecords(url));
  },
);
