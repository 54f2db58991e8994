import { execFileSync } from 'node:child_process';
import { mkdirSync, renameSync, rmSync, statSync, symlinkSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { firstSpec } from '../../../src/cli/first-spec.ts';
import { digestOf, readDrawingSeal, readProblemSeal } from '../../../src/cli/watch/seal.ts';
import { runHemfold } from '../run-program.ts';
import { good, isWhole, other, tooSmall, watchedFolder, watchOnce } from './watched-folder.ts';

const inode = (file: string) => statSync(file).ino;

describe('hemfold watch --once', () => {
  test('draws each spec beside it, as hemfold svg draws it but for the second line', async () => {
    const folder = await watchedFolder({ 'card.json': good, 'evening.yaml': stringify(firstSpec) });
    const { code, output, errors } = await runHemfold(['watch', '--once', folder.path]);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    const { output: svg } = await runHemfold(['svg', folder.at('card.json')]);
    const title = `(${/<title>(.+?)<\/title>/.exec(svg)?.[1]})`;
    expect(output.split('\n')).toEqual([
      `card.json: drawn as card.svg ${title}`,
      `evening.yaml: drawn as evening.svg ${title}`,
      '2 drawn.',
      '',
    ]);
    expect(folder.names()).toEqual(['card.json', 'card.svg', 'evening.svg', 'evening.yaml']);
    for (const name of ['card.svg', 'evening.svg']) {
      const lines = folder.read(name).split('\n');
      expect(lines[1]).toMatch(/^<!-- hemfold watch drew this/);
      expect(lines.toSpliced(1, 1).join('\n')).toBe(svg);
    }
  });

  test('leaves 2 and a text for each spec that is refused, and draws the others', async () => {
    const folder = await watchedFolder({
      'broken.json': '{"style": }',
      'card.json': good,
      'empty.yml': '',
      'small.json': tooSmall,
      'tab.yaml': 'style: twin-sleeve\n\tstock: 1\n',
      'large.json': ' '.repeat(300_000),
      'bytes.json': '\u0000\u0001',
    });
    symlinkSync('loop.json', folder.at('loop.json'));
    const { code, output, errors } = await watchOnce(folder.path);
    expect(code).toBe(2);
    expect(output).toMatch(/^card\.json: drawn .*\n1 drawn, 7 refused\.\n$/);
    expect(errors.trimEnd().split('\n')).toHaveLength(7);
    expect(folder.names().filter((name) => name.endsWith('.svg'))).toEqual(['card.svg']);
    const problems = {
      broken: 'the JSON is malformed at line 1, column 11',
      bytes: 'the JSON is malformed at line 1, column 1',
      empty: 'the YAML is empty',
      large: 'large.json is larger than 256 KiB',
      loop: 'Cannot read loop.json: its links go round in a circle',
      small: 'This cannot be made',
      tab: 'the YAML is malformed at line 2, column 1: a tab indents this line',
    };
    for (const [name, words] of Object.entries(problems)) {
      const text = folder.read(`${name}.problem.txt`);
      expect(text).toMatch(new RegExp(`^${name}\\.(?:json|ya?ml): not drawn\\.\n\n`));
      expect(text).toContain(words);
      expect(errors).toContain(`refused, see ${name}.problem.txt: `);
    }
    expect(folder.read('small.problem.txt')).toContain('What would help:');
  });

  test('does nothing twice', async () => {
    const folder = await watchedFolder({ 'card.json': good, 'small.json': tooSmall });
    expect((await watchOnce(folder.path)).code).toBe(2);
    const before = ['card.svg', 'small.problem.txt'].map((name) => inode(folder.at(name)));
    const { code, output, errors } = await watchOnce(folder.path);
    expect({ code, output }).toEqual({ code: 2, output: '1 drawn before, 1 refused.\n' });
    expect(errors).toMatch(/^small\.json: refused, see small\.problem\.txt: .*\n$/);
    const after = ['card.svg', 'small.problem.txt'].map((name) => inode(folder.at(name)));
    expect(after, 'no file took the name').toEqual(before);
  });

  test('draws again what is newer than its drawing, and what came with an older date', async () => {
    const folder = await watchedFolder({ 'newer.json': good, 'older.json': good, 'same.json': good });
    await watchOnce(folder.path);
    const soon = Date.now() / 1_000 + 60;
    utimesSync(folder.at('newer.json'), soon, soon);
    folder.write('older.json', other);
    utimesSync(folder.at('older.json'), 1, 1);
    const { output } = await watchOnce(folder.path);
    expect(output).toMatch(/^newer\.json: drawn .*\nolder\.json: drawn .*\n2 drawn, 1 drawn before\.\n$/);
    expect(readDrawingSeal(folder.read('older.svg'))).toEqual({ spec: digestOf(other) });
  });

  test('draws again what lost its drawing', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    await watchOnce(folder.path);
    rmSync(folder.at('card.svg'));
    await watchOnce(folder.path);
    expect(isWhole(folder.read('card.svg'))).toBe(true);
  });

  test('takes a stale drawing away, and a problem text that is true no more', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    await watchOnce(folder.path);
    folder.write('card.json', tooSmall);
    await watchOnce(folder.path);
    expect(folder.names()).toEqual(['card.json', 'card.problem.txt']);
    folder.write('card.json', good);
    expect((await watchOnce(folder.path)).code).toBe(0);
    expect(folder.names()).toEqual(['card.json', 'card.svg']);
  });

  test('takes the problem text of a spec that is gone, and keeps its drawing', async () => {
    const folder = await watchedFolder({
      'card.json': good,
      'small.json': tooSmall,
      'my.problem.txt': 'mine',
    });
    await watchOnce(folder.path);
    rmSync(folder.at('card.json'));
    renameSync(folder.at('small.json'), folder.at('tiny.json'));
    await watchOnce(folder.path);
    expect(folder.names()).toEqual(['card.svg', 'my.problem.txt', 'tiny.json', 'tiny.problem.txt']);
  });

  test('looks at specs alone: no folder below, no hidden, temporary or special file', async () => {
    const files = { '.card.json': good, 'card.json~': good, '~$card.json': good, 'card.json.swp': good };
    const folder = await watchedFolder({ ...files, 'notes.txt': 'x' });
    mkdirSync(folder.at('below.json'));
    mkdirSync(folder.at('below'));
    folder.write(join('below', 'card.json'), good);
    symlinkSync('nowhere', folder.at('dangling.json'));
    execFileSync('mkfifo', [folder.at('pipe.json')]);
    const before = folder.names();
    expect(await watchOnce(folder.path)).toEqual({ code: 0, output: 'There is no spec here.\n', errors: '' });
    expect(folder.names()).toEqual(before);
  });

  test('refuses two specs that would share a drawing, whichever was first', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    await watchOnce(folder.path);
    folder.write('card.yaml', stringify(firstSpec));
    const { code, errors } = await watchOnce(folder.path);
    expect(code).toBe(2);
    expect(errors).toMatch(/^card\.json, card\.yaml: refused/);
    expect(folder.read('card.problem.txt')).toContain(
      'card.json and card.yaml would share the drawing card.svg',
    );
    expect(folder.has('card.svg')).toBe(false);
    rmSync(folder.at('card.yaml'));
    expect((await watchOnce(folder.path)).code).toBe(0);
    expect(folder.names()).toEqual(['card.json', 'card.svg']);
  });

  test('clears away the draft of a hemfold that was killed, and no other file', async () => {
    const folder = await watchedFolder({
      '.card.svg.0123abcd.tmp': '<?xml',
      '.card.problem.txt.0123abcd.tmp': 'c',
      '.card.png.0123abcd.tmp': 'mine',
      '.card.svg.old.tmp': 'mine',
    });
    await watchOnce(folder.path);
    expect(folder.names()).toEqual(['.card.png.0123abcd.tmp', '.card.svg.old.tmp']);
  });

  test('a folder that is not there, or is a file, is told with 1', async () => {
    const folder = await watchedFolder({ file: '' });
    for (const [name, words] of [
      ['none', 'there is no such folder'],
      ['file', 'it is no folder'],
    ] as const)
      expect(await watchOnce(folder.at(name))).toEqual({
        code: 1,
        output: '',
        errors: `Cannot look into ${folder.at(name)}: ${words}.\n`,
      });
  });

  test('what cannot be written is told with 1', async () => {
    const name = `${'n'.repeat(245)}.json`; // fits a file system's 255 bytes, as its draft does not
    const folder = await watchedFolder({ [name]: good });
    const { code, errors } = await watchOnce(folder.path);
    expect(code).toBe(1);
    expect(errors).toMatch(/: Cannot write n+\.svg: its name is too long\.\n$/);
    expect(folder.names()).toEqual([name]);
  });

  test('stopped before it is done, it says so with 1', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    expect(await watchOnce(folder.path, AbortSignal.abort())).toEqual({
      code: 1,
      output: 'Stopped; 1 left for the next start.\n',
      errors: '',
    });
    expect(folder.names()).toEqual(['card.json']);
  });
});

describe('a person’s file', () => {
  const mine = '<svg xmlns="http://www.w3.org/2000/svg"><title>My own</title></svg>\n';

  test.each([
    ['drawn', good],
    ['refused', tooSmall],
  ])('with the name of a drawing is kept when the spec would be %s', async (_name, spec) => {
    const folder = await watchedFolder({ 'card.json': spec, 'card.svg': mine });
    const { code } = await watchOnce(folder.path);
    expect(code).toBe(2);
    expect(folder.read('card.svg')).toBe(mine);
    const text = folder.read('card.problem.txt');
    expect(readProblemSeal(text)).toBeDefined();
    if (spec === good) expect(text).toContain('card.svg is there already');
  });

  test('that was hemfold’s drawing until it was changed is kept', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    await watchOnce(folder.path);
    const changed = folder.read('card.svg').replace('</svg>', '<path d="M 1 1 L 2 2"/></svg>');
    folder.write('card.svg', changed);
    folder.write('card.json', other);
    expect((await watchOnce(folder.path)).code).toBe(2);
    folder.write('card.json', tooSmall);
    expect((await watchOnce(folder.path)).code).toBe(2);
    expect(folder.read('card.svg')).toBe(changed);
  });

  test('that a link leads to is kept, even if hemfold drew it there', async () => {
    const elsewhere = await watchedFolder({ 'mine.svg': mine, 'drawn.json': other });
    await watchOnce(elsewhere.path);
    const drawn = elsewhere.read('drawn.svg');
    const folder = await watchedFolder({ 'card.json': good, 'next.json': good });
    symlinkSync(elsewhere.at('mine.svg'), folder.at('card.svg'));
    symlinkSync(elsewhere.at('drawn.svg'), folder.at('next.svg'));
    expect((await watchOnce(folder.path)).code).toBe(2);
    expect(elsewhere.read('mine.svg')).toBe(mine);
    expect(elsewhere.read('drawn.svg')).toBe(drawn);
  });

  test('with the name of a problem text is kept; the terminal tells the problem', async () => {
    const folder = await watchedFolder({ 'card.json': tooSmall, 'card.problem.txt': 'my notes' });
    const { errors } = await watchOnce(folder.path);
    expect(errors).toMatch(/^card\.json: refused: .*mm.* \(card\.problem\.txt is not hemfold's\)\n$/);
    folder.write('card.json', good);
    expect((await watchOnce(folder.path)).code).toBe(0);
    expect(folder.read('card.problem.txt')).toBe('my notes');
  });

  test('that is the very drawing, as hemfold svg wrote it, is taken over', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    await runHemfold(['svg', folder.at('card.json'), '-o', folder.at('card.svg')]);
    expect(isWhole(folder.read('card.svg'))).toBe(false);
    expect((await watchOnce(folder.path)).code).toBe(0);
    expect(isWhole(folder.read('card.svg'))).toBe(true);
  });

  test('a folder with the name of a drawing is kept', async () => {
    const folder = await watchedFolder({ 'card.json': good });
    mkdirSync(folder.at('card.svg'));
    expect((await watchOnce(folder.path)).code).toBe(2);
    expect(statSync(folder.at('card.svg')).isDirectory()).toBe(true);
  });
});

test('the check for a whole drawing sees one that is cut short', async () => {
  const folder = await watchedFolder({ 'card.json': good });
  await watchOnce(folder.path);
  const svg = folder.read('card.svg');
  expect(isWhole(svg)).toBe(true);
  for (const end of [0, 60, 300, svg.length - 8, svg.length - 1])
    expect(isWhole(svg.slice(0, end))).toBe(false);
});
