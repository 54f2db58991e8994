import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { openStore, sqliteFileName } from '../../src/store/open-store.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { crashOnce, firstRun } from './crash-run.ts';
import { countHeld, operation, owner } from './operations.ts';

const seed = 7;

describe('a process that is killed while it writes', () => {
  test('loses no acknowledged change, in five crashes (npm run crash -- --times 200 for more)', async () => {
    const folder = await tempFolder();
    let run = firstRun;
    for (const acknowledge of [1, 3, 8, 13, 21]) run = await crashOnce(folder, run, { seed, acknowledge });
    expect(run.held).toBeGreaterThanOrEqual(1 + 3 + 8 + 13 + 21);
    expect(run.model.size).toBeGreaterThan(3);
  });
});

describe('the check', () => {
  async function crashed() {
    const folder = await tempFolder();
    const run = await crashOnce(folder, firstRun, { seed, acknowledge: 20 });
    const held = async () => {
      const store = openStore({ dataDir: folder, databaseUrl: undefined }, () => new Date());
      try {
        return await countHeld(store, firstRun.model, seed, 0, run.held);
      } finally {
        await store.close();
      }
    };
    const harm = (text: string) => {
      const database = new DatabaseSync(join(folder, sqliteFileName));
      const { changes } = database.prepare(text).run();
      database.close();
      expect(changes).toBeGreaterThan(0);
    };
    return { run, held, harm };
  }

  test('finds what is there', async () => {
    const { run, held } = await crashed();
    expect(await held()).toBe(run.held);
  });

  test.each([
    ['a lost change', 'delete from item where name = (select name from item limit 1)'],
    [
      'a lost older version',
      "delete from revision where (name, version) in (select name, min(version) from revision where kind = 'designs' group by name having count(*) > 1)",
    ],
    ['half a change', "update revision set body = '{}' where rowid = (select max(rowid) from revision)"],
  ])('finds %s', async (_, text) => {
    const { held, harm } = await crashed();
    harm(text);
    expect(await held()).toBeUndefined();
  });

  test('has changes of every sort to look at', () => {
    const all = Array.from({ length: 200 }, (_, number) => operation(seed, number));
    expect(new Set(all.map(({ does }) => does))).toEqual(new Set(['put', 'remove']));
    expect(new Set(all.map(({ kind }) => kind))).toEqual(new Set(['designs', 'stock']));
    expect(new Set(all.map(({ name }) => name)).size).toBe(6);
    expect(all.every((each) => each.owner === owner)).toBe(true);
  });
});
