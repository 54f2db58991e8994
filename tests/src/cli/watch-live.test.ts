import { appendFileSync, renameSync, rmSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { digestOf, readDrawingSeal } from '../../../src/cli/watch/seal.ts';
import { startHemfold } from '../run-program.ts';
import { good, isWhole, other, tooSmall, watchedFolder, watchOnce } from './watched-folder.ts';

/** Far longer than anything here takes; a condition that holds earlier ends the wait. */
const limit = { timeout: 30_000, interval: 50 };

/** The watcher on a folder, once it says that it watches. */
async function watching(path: string) {
  const run = startHemfold(['watch', path]);
  await expect.poll(run.output, limit).toContain(`Watching ${path}`);
  return run;
}

const many = 150;

/** A folder with many specs, and the watcher on it once it has drawn some. */
async function amongMany() {
  const specs = Array.from({ length: many }, (_, index) => [`spec-${index}.json`, good]);
  const folder = await watchedFolder(Object.fromEntries(specs));
  const run = await watching(folder.path);
  const drawings = () => folder.names().filter((name) => name.endsWith('.svg'));
  await expect.poll(() => drawings().length, limit).toBeGreaterThan(5);
  return { folder, run, drawings };
}

describe('hemfold watch', () => {
  test('draws what is dropped, again when it changes, and ends on Ctrl+C with 0', async () => {
    const folder = await watchedFolder();
    const run = await watching(folder.path);
    const specDrawn = () =>
      folder.has('card.svg') ? readDrawingSeal(folder.read('card.svg'))?.spec : undefined;
    folder.write('card.json', good);
    await expect.poll(specDrawn, limit).toBe(digestOf(good));

    // an editor's save: a draft beside the file takes its name
    folder.write('.card.json.draft', other);
    renameSync(folder.at('.card.json.draft'), folder.at('card.json'));
    await expect.poll(specDrawn, limit).toBe(digestOf(other));

    run.child.kill('SIGINT');
    expect(await run.ended).toBe(0);
    expect(run.errors()).toBe('');
    expect(run.output()).toMatch(/^Watching .*\n(?:card\.json: drawn as card\.svg .*\n){2}Stopped\.\n$/);
    expect(folder.names()).toEqual(['card.json', 'card.svg']);
  });

  test('half a file is refused at the most, and drawn once the rest is there', async () => {
    const folder = await watchedFolder();
    await watching(folder.path);
    folder.write('card.json', good.slice(0, 40));
    await expect.poll(() => folder.has('card.problem.txt'), limit).toBe(true);
    expect(folder.has('card.svg')).toBe(false);
    appendFileSync(folder.at('card.json'), good.slice(40));
    await expect.poll(folder.names, limit).toEqual(['card.json', 'card.svg']);
    expect(isWhole(folder.read('card.svg'))).toBe(true);
  });

  test('follows renames and deletions', async () => {
    const folder = await watchedFolder({ 'one.json': good, 'small.json': tooSmall });
    const run = await watching(folder.path);
    await expect
      .poll(folder.names, limit)
      .toEqual(['one.json', 'one.svg', 'small.json', 'small.problem.txt']);
    renameSync(folder.at('one.json'), folder.at('two.json'));
    rmSync(folder.at('small.json'));
    await expect.poll(folder.names, limit).toEqual(['one.svg', 'two.json', 'two.svg']);
    await expect.poll(run.output, limit).toContain('small.problem.txt: taken away, as its spec is gone\n');
  });

  test('draws once a person’s file is out of the way', async () => {
    const folder = await watchedFolder({ 'card.json': good, 'card.svg': 'mine' });
    const run = await watching(folder.path);
    await expect.poll(() => folder.has('card.problem.txt'), limit).toBe(true);
    expect(folder.read('card.svg')).toBe('mine');
    renameSync(folder.at('card.svg'), folder.at('mine.svg'));
    await expect.poll(folder.names, limit).toEqual(['card.json', 'card.svg', 'mine.svg']);
    expect(folder.read('mine.svg')).toBe('mine');
    expect(run.errors()).toMatch(
      /^card\.json: refused, see card\.problem\.txt: card\.svg is there already.*\n$/,
    );
  });

  test('a folder that vanishes ends it with 1', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    const run = await watching(folder.path);
    await expect.poll(() => folder.has('card.svg'), limit).toBe(true);
    renameSync(folder.path, `${folder.path}-gone`);
    try {
      expect(await run.ended).toBe(1);
      expect(run.errors()).toBe(`Cannot look into ${folder.path}: there is no such folder.\n`);
    } finally {
      renameSync(`${folder.path}-gone`, folder.path);
    }
  });

  test('stopped among many, it finishes the one in hand and tells of each', async () => {
    const { folder, run, drawings } = await amongMany();
    run.child.kill('SIGTERM');
    expect(await run.ended).toBe(0);
    const told = run.output().match(/drawn as /g) ?? [];
    expect(drawings()).toHaveLength(told.length);
    for (const name of drawings()) expect(isWhole(folder.read(name)), name).toBe(true);
    expect(folder.names()).toHaveLength(many + told.length);
  });

  test('killed among many, it leaves no half drawing, and the next start does the rest', async () => {
    const { folder, run, drawings } = await amongMany();
    run.child.kill('SIGKILL');
    await run.ended;
    const before = drawings();
    for (const name of before) expect(isWhole(folder.read(name)), name).toBe(true);
    const { code, output } = await watchOnce(folder.path);
    expect(code).toBe(0);
    expect(output.match(/drawn as /g) ?? []).toHaveLength(many - before.length);
    expect(drawings()).toHaveLength(many);
    expect(folder.names(), 'specs, drawings and no draft').toHaveLength(2 * many);
  });
});
