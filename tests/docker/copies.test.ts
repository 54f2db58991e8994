import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { DatabaseUrl } from '../../src/store/database-url.ts';
import { openStore } from '../../src/store/open-store.ts';
import { projectFolder } from '../src/run-program.ts';
import { runSql } from '../src/store/postgres-place.ts';
import { programFolders, startPostgres } from '../src/store/postgres-server.ts';
import { toolsRequired } from '../support/dtd.ts';

const readme = readFileSync(join(projectFolder, 'docker/README.md'), 'utf8');

/** The words of a command that the README gives to the database's container. */
function wordsOf(program: string): readonly string[] {
  const [, words = ''] =
    new RegExp(`exec -T database ${program} (.*) [<>] hemfold\\.dump`, 'u').exec(readme) ?? [];
  return words.split(' ');
}

const server = await startPostgres();
afterAll(() => server?.discard());

describe.skipIf(server === undefined && !toolsRequired)(
  'a copy of PostgreSQL (skipped without Debian’s postgresql)',
  () => {
    test('made and brought back as the README says has what was stored then', async () => {
      const address = new URL(server?.url ?? '');
      await runSql(address.href, 'create role hemfold login superuser');
      await runSql(address.href, "create database hemfold template template0 encoding 'UTF8'");
      const own = `postgresql:///hemfold${address.search.replace('user=keeper', 'user=hemfold')}`;
      const open = () =>
        openStore({ dataDir: '/nowhere', databaseUrl: DatabaseUrl.parse(own) }, () => new Date());
      const run = (program: string, input?: Buffer) => {
        const { status, stdout, stderr } = spawnSync(
          join(programFolders().at(-1) ?? '', program),
          ['--host', address.searchParams.get('host') ?? '', ...wordsOf(program)],
          { ...(input ? { input } : {}), maxBuffer: 2 ** 26 },
        );
        expect([status, String(stderr)]).toEqual([0, '']);
        return stdout;
      };

      const before = open();
      const { stored } = await before.put('her', 'designs', 'gift', { tide: 'low' }, 'any');
      const dump = run('pg_dump');
      await before.put('her', 'designs', 'gift', { tide: 'high' }, 'any');
      await before.put('her', 'designs', 'other', { tide: 'high' }, 'any');
      await before.close();

      run('pg_restore', dump);
      const after = open();
      expect(await after.read('her', 'designs', 'gift')).toEqual(stored);
      expect(await after.read('her', 'designs', 'other')).toBeUndefined();
      expect((await after.put('her', 'designs', 'gift', { tide: 'ebb' }, 'any')).outcome).toBe('replaced');
      await after.close();
    });

    test('has the words of both commands', () => {
      expect(wordsOf('pg_dump')).toContain('--format');
      expect(wordsOf('pg_restore')).toContain('--single-transaction');
    });
  },
);
