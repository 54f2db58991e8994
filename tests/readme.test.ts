import { existsSync } from 'node:fs';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { variableNames } from '../src/config.ts';
import { build } from './src/build.ts';
import { projectFolder, start } from './src/run-program.ts';
import { tempFolder } from './src/temp-folder.ts';

interface Block {
  /** What follows the fence, as in `json refused`. */
  readonly info: string;
  readonly text: string;
}

/** The fenced blocks of a Markdown text. */
const blocksIn = (markdown: string): readonly Block[] =>
  [...markdown.matchAll(/^```(.*)\n([\s\S]*?)^```$/gm)].map(([, info = '', text = '']) => ({
    info: info.trim(),
    text,
  }));

/** Links and pictures that point into the project. */
const linksIn = (markdown: string): readonly string[] =>
  [...markdown.matchAll(/\]\(([^)\s#]+)[^)]*\)/g)]
    .map(([, target = '']) => target)
    .filter((target) => !/^[a-z]+:/.test(target));

/** Files that a text names, each once. */
const filesIn = (text: string): readonly string[] => [
  ...new Set(text.match(/(?<![\w./-])[\w-]+\.(?:fold|html|json|pdf|svg|zip)\b/g)),
];

/** The text with every file that it names in a folder. */
const movedTo = (folder: string, text: string): string =>
  filesIn(text).reduce((moved, file) => moved.replaceAll(file, join(folder, file)), text);

/** Lines that somebody meant to write later. */
const unwrittenIn = (name: string, text: string): readonly string[] =>
  text
    .split('\n')
    .flatMap((line, index) =>
      /\b(?:BENCH|FIXME|TBD|TODO|XXX)\b|\?\?\?/u.test(line) ? [`${name}:${index + 1}: ${line}`] : [],
    );

const readme = await readFile(join(projectFolder, 'README.md'), 'utf8');
const blocks = blocksIn(readme);
const tours = blocks.filter(({ info, text }) => info === 'sh' && /^# tour\b/u.test(text));
/** The tour is one shell text; what its first block defines serves the others. */
const tour = tours.map(({ text }) => text).join('\n');
const commandLines = blocks.filter(({ info, text }) => info === 'sh' && text.startsWith('# command line\n'));
const specs = blocks.filter(({ info }) => info.split(' ')[0] === 'json');

/** Runs a shell text in a folder, stopping at the first command that fails. */
async function runIn(folder: string, text: string, service: string) {
  const run = start('sh', ['-e', '-c', text], { cwd: folder, env: { HEMFOLD: service } });
  const code = await run.ended;
  return { code, output: run.output() + run.errors() };
}

/** Holds a file to its name's ending. */
async function expectWhole(file: string): Promise<void> {
  const text = await readFile(file, 'utf8');
  if (/\.(?:json|fold)$/.test(file)) expect(JSON.parse(text), file).toBeTypeOf('object');
  else if (file.endsWith('.svg')) expect(text, file).toMatch(/^<\?xml[\s\S]*<svg [\s\S]*<\/svg>\s*$/);
  else expect(text.length, file).toBeGreaterThan(0);
}

describe('README.md', () => {
  test('has a tour, command lines, specs, and one that is refused', () => {
    expect(tours.length).toBe(2);
    expect(commandLines.length).toBeGreaterThan(0);
    expect(specs.length).toBeGreaterThan(1);
    expect(specs.map(({ info }) => info)).toContain('json refused');
    expect(specs.map(({ info }) => info)).toContain('json set');
    for (const { info } of specs) expect(['json', 'json refused', 'json set']).toContain(info);
  });

  test('its tour runs, and writes the files that it names', async () => {
    const app = await build();
    const service = await app.listen({ host: '127.0.0.1', port: 0 });
    const folder = await tempFolder();
    expect(await runIn(folder, tour, service)).toEqual({ code: 0, output: '' });
    const named = filesIn(tour);
    expect(named.length).toBeGreaterThan(0);
    expect((await readdir(folder)).toSorted()).toEqual(named.toSorted());
    for (const file of named) await expectWhole(join(folder, file));
  });

  test.each(commandLines)('its command lines run in a clone, and write what they name', async ({ text }) => {
    const folder = await tempFolder();
    await writeFile(join(folder, 'SPEC.json'), specs[0]?.text ?? '');
    const { code, output } = await runIn(projectFolder, movedTo(folder, text), '');
    expect(code, output).toBe(0);
    // the line without -o
    expect(JSON.parse(output)).toHaveProperty('dimensions');
    const named = filesIn(text);
    expect(named).toContain('SPEC.json');
    expect(named.length).toBeGreaterThan(1);
    expect((await readdir(folder)).toSorted()).toEqual(named.toSorted());
    for (const file of named) await expectWhole(join(folder, file));
  });

  test('npm start -- --help lists every setting, as it says', async () => {
    expect(readme).toContain('`npm start -- --help` lists every setting');
    const { code, output } = await runIn(projectFolder, 'npm start -- --help', '');
    expect(code, output).toBe(0);
    for (const name of variableNames) expect(output).toContain(`  ${name} `);
  });

  test('leaves nothing to be written later', () => {
    expect(unwrittenIn('README.md', readme)).toEqual([]);
  });

  test.each(specs)('its $info block is answered as it says (%#)', async ({ info, text }) => {
    const app = await build();
    const headers = { 'content-type': 'application/json' };
    const url = info === 'json set' ? '/v1/sets/plan' : '/v1/folders/plan';
    const reply = await app.inject({ method: 'POST', url, headers, payload: text });
    expect(reply.statusCode, reply.body).toBe(info === 'json refused' ? 422 : 200);
  });

  test('its links lead somewhere', () => {
    const links = linksIn(readme);
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((target) => !existsSync(join(projectFolder, target)))).toEqual([]);
  });
});

describe('the checks of README.md', () => {
  test('find blocks with what follows the fence, and links into the project', () => {
    const markdown =
      '```sh\n# tour\nls\n```\n\nText\n\n```json refused\n{}\n```\n[a](b.md#c) ![d](e/f.svg) [g](https://h)';
    expect(blocksIn(markdown)).toEqual([
      { info: 'sh', text: '# tour\nls\n' },
      { info: 'json refused', text: '{}\n' },
    ]);
    expect(linksIn(markdown)).toEqual(['b.md', 'e/f.svg']);
  });

  test('find the files that a text names, and move them', () => {
    const text = 'npm run -s x -- svg SPEC.json -o folder.svg # SPEC.json, not src/a.json';
    expect(filesIn(text)).toEqual(['SPEC.json', 'folder.svg']);
    expect(movedTo('/t', text)).toBe(
      'npm run -s x -- svg /t/SPEC.json -o /t/folder.svg # /t/SPEC.json, not src/a.json',
    );
  });

  test.each([
    ['BENCH', true],
    ['about 12 ms (TBD)', true],
    ['TODO: say more', true],
    ['costs ??? mm', true],
    ['`npm run bench` shows it', false],
    ['Benches and todos are words', false],
  ])('see what is to be written later: %s, %s', (line, isUnwritten) => {
    expect(unwrittenIn('README.md', `# hemfold\n${line}\n`)).toEqual(
      isUnwritten ? [`README.md:2: ${line}`] : [],
    );
  });

  test('see a command line whose command is not there', async () => {
    const text = commandLines[0]?.text.replaceAll('npm run -s hemfold --', 'npm run -s hemfolded --') ?? '';
    const { code } = await runIn(projectFolder, text, '');
    expect(code).not.toBe(0);
  });

  test('see a command that fails before the last one', async () => {
    const { code } = await runIn(await tempFolder(), 'false\ntrue\n', 'http://127.0.0.1:1');
    expect(code).toBe(1);
  });

  test('see a request that is refused', async () => {
    const app = await build();
    const service = await app.listen({ host: '127.0.0.1', port: 0 });
    const refused = tour.replaceAll('"iso-a6"', '"iso-a0"');
    const { code } = await runIn(await tempFolder(), refused, service);
    expect(code).toBe(22); // curl: an HTTP reply of 400 or above
  });

  test('see a file that is cut short', async () => {
    const folder = await tempFolder();
    await runIn(folder, "printf '{' > plan.json; printf '<?xml?><svg ' > folder.svg", '');
    await expect(expectWhole(join(folder, 'plan.json'))).rejects.toThrow('JSON');
    await expect(expectWhole(join(folder, 'folder.svg'))).rejects.toThrow();
  });
});
