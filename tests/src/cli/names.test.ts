import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { firstSpec } from '../../../src/cli/first-spec.ts';
import { homeCaller } from '../../../src/members/caller.ts';
import { openStore } from '../../../src/store/open-store.ts';
import { runHemfold } from '../run-program.ts';
import { tempFolder } from '../temp-folder.ts';

const named = (convention: string) => JSON.stringify({ ...firstSpec, convention });

/** A data folder whose owner keeps one convention. */
async function stockedFolder(): Promise<string> {
  const dataDir = await tempFolder();
  const store = openStore({ dataDir, databaseUrl: undefined }, () => new Date());
  const convention = { layers: { score: { colour: '#123456' } } };
  await store.put(homeCaller.owner, 'conventions', 'mine', convention, 'any');
  await store.close();
  return dataDir;
}

test('a spec on the command line names what is kept at home', async () => {
  const env = { DATA_DIR: await stockedFolder() };
  const { code, output, errors } = await runHemfold(['svg', '-'], { env, input: named('mine') });
  expect({ code, errors }).toEqual({ code: 0, errors: '' });
  expect(output).toContain('#123456');
});

test('and so does a set', async () => {
  const dataDir = await tempFolder();
  const store = openStore({ dataDir, databaseUrl: undefined }, () => new Date());
  await store.put(homeCaller.owner, 'stock', 'lamp room blue', { size: 'iso-a4', count: 7 }, 'any');
  await store.close();
  const pieces = [{ name: 'mat', cut: { width: '90 mm', height: '60 mm' } }];
  const set = { kits: 1, pieces, papers: ['lamp room blue'] };
  const { code, output, errors } = await runHemfold(['set-plan', '-'], {
    env: { DATA_DIR: dataDir },
    input: JSON.stringify(set),
  });
  expect({ code, errors }).toEqual({ code: 0, errors: '' });
  expect(JSON.parse(output).shopping[0]).toMatchObject({ item: 'lamp room blue', have: 7 });
});

test('and so does one that is watched', async () => {
  const env = { DATA_DIR: await stockedFolder() };
  const folder = await tempFolder();
  writeFileSync(join(folder, 'card.json'), named('mine'));
  writeFileSync(join(folder, 'other.json'), named('not mine'));
  const { code, output, errors } = await runHemfold(['watch', '--once', folder], { env });
  expect(code).toBe(2);
  expect(output).toMatch(/^card\.json: drawn/m);
  expect(errors).toContain('nothing is kept under the name "not mine"');
});

test('starting conventions need no store, and none is made', async () => {
  const folder = await tempFolder();
  const env = { DATA_DIR: join(folder, 'data') };
  const { code, output } = await runHemfold(['svg', '-'], { env, input: named('inches') });
  expect(code).toBe(0);
  expect(output).toMatch(/width="[\d.]+in"/);
});

test('a store that is no store is said, and nothing is written', async () => {
  const dataDir = await tempFolder();
  writeFileSync(join(dataDir, 'hemfold.sqlite'), 'tide table '.repeat(1000));
  const { code, output, errors } = await runHemfold(['svg', '-'], {
    env: { DATA_DIR: dataDir },
    input: named('mine'),
  });
  expect({ code, output }).toEqual({ code: 1, output: '' });
  expect(errors).toMatch(/^The spec names what is kept, and that cannot be read: The store cannot be read/);
});
