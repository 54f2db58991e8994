import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
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

const readme = await readFile(join(projectFolder, 'README.md'), 'utf8');
const blocks = blocksIn(readme);
const tours = blocks.filter(({ info, text }) => info === 'sh' && text.startsWith('# tour\n'));
const specs = blocks.filter(({ info }) => info.split(' ')[0] === 'json');

/** Runs a shell text in an empty folder, stopping at the first command that fails. */
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
  test('has a tour, specs, and one that is refused', () => {
    expect(tours.length).toBeGreaterThan(0);
    expect(specs.length).toBeGreaterThan(1);
    expect(specs.map(({ info }) => info)).toContain('json refused');
    for (const { info } of specs) expect(['json', 'json refused']).toContain(info);
  });

  test.each(tours)('its tour runs, and writes the files that it names', async ({ text }) => {
    const app = await build();
    const service = await app.listen({ host: '127.0.0.1', port: 0 });
    const folder = await tempFolder();
    expect(await runIn(folder, text, service)).toEqual({ code: 0, output: '' });
    const named = new Set(text.match(/(?<![\w./-])[\w-]+\.(?:fold|html|json|pdf|svg|zip)\b/g));
    expect(named.size).toBeGreaterThan(0);
    expect((await readdir(folder)).toSorted()).toEqual([...named].toSorted());
    for (const file of named) await expectWhole(join(folder, file));
  });

  test.each(specs)('its $info block is answered as it says (%#)', async ({ info, text }) => {
    const app = await build();
    const headers = { 'content-type': 'application/json' };
    const reply = await app.inject({ method: 'POST', url: '/v1/folders/plan', headers, payload: text });
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

  test('see a command that fails before the last one', async () => {
    const { code } = await runIn(await tempFolder(), 'false\ntrue\n', 'http://127.0.0.1:1');
    expect(code).toBe(1);
  });

  test('see a request that is refused', async () => {
    const app = await build();
    const service = await app.listen({ host: '127.0.0.1', port: 0 });
    const tour = tours[0]?.text.replaceAll('"iso-a6"', '"iso-a0"') ?? '';
    const { code } = await runIn(await tempFolder(), tour, service);
    expect(code).toBe(22); // curl: an HTTP reply of 400 or above
  });

  test('see a file that is cut short', async () => {
    const folder = await tempFolder();
    await runIn(folder, "printf '{' > plan.json; printf '<?xml?><svg ' > folder.svg", '');
    await expect(expectWhole(join(folder, 'plan.json'))).rejects.toThrow('JSON');
    await expect(expectWhole(join(folder, 'folder.svg'))).rejects.toThrow();
  });
});
