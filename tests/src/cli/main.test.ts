import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../../src/cli/first-spec.ts';
import { folderCommands } from '../../../src/cli/folder-commands.ts';
import { setCommands } from '../../../src/cli/set-commands.ts';
import { hemfoldVersion } from '../../../src/version.ts';
import { build } from '../build.ts';
import { runHemfold, start } from '../run-program.ts';
import { tempFolder } from '../temp-folder.ts';

const spec = JSON.stringify(firstSpec);

describe('hemfold', () => {
  test('--help names every command', async () => {
    const { code, output, errors } = await runHemfold(['--help']);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    for (const name of [
      'serve',
      'plan',
      'svg',
      ...[...folderCommands, ...setCommands].map((command) => command.name),
    ])
      expect(output).toMatch(new RegExp(`^  ${name} `, 'm'));
  });

  test('--version is the version of the package', async () => {
    expect((await runHemfold(['--version'])).output).toBe(`${hemfoldVersion}\n`);
  });

  test('a slip in a command is answered with the nearest one, and 1', async () => {
    const { code, errors } = await runHemfold(['plann', 'x.json']);
    expect(code).toBe(1);
    expect(errors).toContain('plan');
  });

  test('serve --help lists the settings', async () => {
    const { output } = await runHemfold(['serve', '--help']);
    for (const name of ['HOST', 'PORT', 'DATA_DIR', 'LOG_LEVEL', 'RATE_LIMIT', 'TRUST_PROXY'])
      expect(output).toContain(`  ${name} `);
  });
});

describe.each(['plan', 'svg'] as const)('hemfold %s', (name) => {
  test('writes to a file what it writes to standard output, and what the service answers', async () => {
    const folder = await tempFolder();
    const specFile = join(folder, 'spec.json');
    const file = join(folder, 'made');
    writeFileSync(specFile, spec);
    const shown = await runHemfold([name, specFile]);
    const written = await runHemfold([name, '-', '-o', file], { input: spec });
    expect(shown).toMatchObject({ code: 0, errors: '' });
    expect(written).toEqual({ code: 0, output: '', errors: '' });
    expect(readFileSync(file, 'utf8')).toBe(shown.output);
    expect(readdirSync(folder).toSorted()).toEqual(['made', 'spec.json']);

    const app = await build();
    const reply = await app.inject({ method: 'POST', url: `/v1/folders/${name}`, payload: firstSpec });
    expect(reply.statusCode).toBe(200);
    if (name === 'plan') expect(JSON.parse(shown.output)).toEqual(reply.json());
    else expect(shown.output).toBe(reply.body);
  });

  test('refuses a spec with 2 and the words of the service, and leaves the old file alone', async () => {
    const folder = await tempFolder();
    const file = join(folder, 'made');
    writeFileSync(file, 'old');
    const wrong = { ...firstSpec, stok: 1 };
    const { code, output, errors } = await runHemfold([name, '-', '-o', file], {
      input: JSON.stringify(wrong),
    });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(readFileSync(file, 'utf8')).toBe('old');

    const app = await build();
    const reply = await app.inject({ method: 'POST', url: `/v1/folders/${name}`, payload: wrong });
    const { title, errors: faults } = reply.json();
    expect(errors).toBe(`${title}\n  /stok: ${faults[0].message}\n    ${faults[0].remedy}\n`);
  });

  test('refuses what cannot be folded with 2, and says what would help', async () => {
    const small = { ...firstSpec, stock: { width: '60 mm', height: '80 mm' } };
    const { code, output, errors } = await runHemfold([name, '-'], { input: JSON.stringify(small) });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain('This cannot be made');
  });

  test.each([
    ['malformed JSON', '{"style": }', /malformed at line 1, column 11/],
    ['nothing', '', /the JSON is empty/],
  ])('refuses %s with 2', async (_name, input, words) => {
    const { code, errors } = await runHemfold([name, '-'], { input });
    expect(code).toBe(2);
    expect(errors).toMatch(words);
  });

  test.each([
    [
      'a spec that is not there',
      ['/nowhere/spec.json'],
      'Cannot read /nowhere/spec.json: there is no such file.\n',
    ],
    ['a spec that is a folder', ['/'], 'Cannot read /: it is a folder.\n'],
    [
      'an output that cannot be',
      ['-', '-o', '/nowhere/made'],
      'Cannot write /nowhere/made: there is no such file.\n',
    ],
  ])('fails with 1 for %s', async (_name, words, message) => {
    const { code, errors } = await runHemfold([name, ...words], { input: spec });
    expect({ code, errors }).toEqual({ code: 1, errors: message });
  });

  test('fails with 1 for a file far too large for a spec', async () => {
    const { code, errors } = await runHemfold([name, '-'], { input: ' '.repeat(300_000) });
    expect(code).toBe(1);
    expect(errors).toContain('larger than 256 KiB');
  });
});

test('hemfold guide writes the maker’s sheet as the service does, and a PDF where one is asked for', async () => {
  const page = await runHemfold(['guide', '-', '--machine', 'no'], { input: spec });
  const app = await build();
  const reply = await app.inject({ method: 'POST', url: '/v1/folders/guide?machine=no', payload: firstSpec });
  expect(page).toEqual({ code: 0, output: reply.body, errors: '' });
  const file = join(await tempFolder(), 'guide.pdf');
  expect((await runHemfold(['guide', '-', '--format', 'pdf', '-o', file], { input: spec })).code).toBe(0);
  expect(readFileSync(file).subarray(0, 5).toString('latin1')).toBe('%PDF-');
});

describe('a set on the command line', () => {
  const set = {
    kits: 3,
    units: 'mm',
    pieces: [{ name: 'mat', cut: { width: 90, height: 60 } }],
    papers: [{ size: 'iso-a4' }],
  };
  const input = JSON.stringify(set);

  test('is planned and drawn as by the service', async () => {
    const app = await build();
    const plan = await app.inject({ method: 'POST', url: '/v1/sets/plan', payload: set });
    const planned = await runHemfold(['set-plan', '-'], { input });
    expect(planned).toMatchObject({ code: 0, errors: '' });
    expect(JSON.parse(planned.output)).toEqual(plan.json());
    const sheets = await app.inject({ method: 'POST', url: '/v1/sets/sheets', payload: set });
    const file = join(await tempFolder(), 'sheets.zip');
    expect((await runHemfold(['set-sheets', '-', '-o', file], { input })).code).toBe(0);
    expect(readFileSync(file).equals(sheets.rawPayload)).toBe(true);
  });

  test('has its labels made', async () => {
    const file = join(await tempFolder(), 'labels.pdf');
    expect((await runHemfold(['set-labels', '-', '--paper', 'letter', '-o', file], { input })).code).toBe(0);
    expect(readFileSync(file).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  test('is refused with 2 and the place of the fault', async () => {
    const wrong = JSON.stringify({ ...set, kits: 0 });
    const { code, output, errors } = await runHemfold(['set-plan', '-'], { input: wrong });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain('/kits');
  });
});

test('a reader that leaves early is no fault', async () => {
  const folder = await tempFolder();
  const specFile = join(folder, 'spec.json');
  writeFileSync(specFile, spec);
  const pipe = `"$0" src/cli/main.ts plan "$1" | head -c 1; echo " \${PIPESTATUS[0]}"`;
  const run = start('bash', ['-c', pipe, process.execPath, specFile]);
  expect(await run.ended).toBe(0);
  expect(run.output()).toBe('{ 0\n');
  expect(run.errors()).toBe('');
});

test('the examples of the first spec are the documented one', () => {
  expect(firstSpec).toMatchObject({
    style: 'twin-sleeve',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } },
    stock: { size: 'iso-a3' },
  });
  expect(existsSync('data'), 'no command makes the data folder').toBe(false);
});
