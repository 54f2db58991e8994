import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { firstSpec } from '../../../src/cli/first-spec.ts';
import { folderCommands } from '../../../src/cli/folder-commands.ts';
import { readYaml } from '../../../src/cli/read-yaml.ts';
import { readJson } from '../../../src/problem/read-json.ts';
import { runHemfold } from '../run-program.ts';
import { tempFolder } from '../temp-folder.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readYaml(bytes(text));

/** What is refused at any place, as JSON too. */
const hasUnsafeName = (text: string) => text.includes('__proto__');

describe('readYaml', () => {
  test('reads any JSON text as JSON is read', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue({ maxDepth: 4 }), fc.boolean(), async (value, spread) => {
        const text = JSON.stringify(value, undefined, spread ? 2 : undefined);
        fc.pre(!hasUnsafeName(text));
        expect(await read(text)).toEqual(readJson(bytes(text)));
      }),
    );
  });

  test('reads any value that is written as YAML', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue({ maxDepth: 4 }), async (value) => {
        const json = JSON.stringify(value);
        fc.pre(!hasUnsafeName(json));
        expect(await read(stringify(JSON.parse(json)))).toEqual(JSON.parse(json));
      }),
    );
  });

  // YAML 1.2.2 section 10.3.2, the core schema's table and example; from memory
  test('resolves plain text by the core schema', async () => {
    const text = `
A null: null
Booleans: [ true, True, false, FALSE ]
Integers: [ 0, 0o7, 0x3A, -19 ]
Floats: [ 0., .5, +12e03, -2E+05 ]
Not so in 1.2: [ yes, no, on, 1:30, 1_000, 2001-12-14, 0b1 ]
`;
    expect(await read(text)).toEqual({
      'A null': null,
      Booleans: [true, true, false, false],
      Integers: [0, 7, 58, -19],
      Floats: [0, 0.5, 12_000, -200_000],
      'Not so in 1.2': ['yes', 'no', 'on', '1:30', '1_000', '2001-12-14', '0b1'],
    });
  });

  test.each([
    ['1/2', '1/2'],
    ['5-1/8"', '5-1/8"'],
    ['5 3/4 in', '5 3/4 in'],
    ['⅛ in', '⅛ in'],
    ['0.25 mm', '0.25 mm'],
    ['0.25', 0.25],
  ])('reads the length %s as %j', async (text, value) => {
    expect(await read(`spine: ${text}`)).toEqual({ spine: value });
  });

  test('copies what an alias stands for', async () => {
    expect(await read('card: &a6 { size: iso-a6 }\nother: *a6')).toEqual({
      card: { size: 'iso-a6' },
      other: { size: 'iso-a6' },
    });
  });

  test('a line with %YAML 1.1 changes nothing', async () => {
    expect(await read('%YAML 1.1\n---\na: yes\nb: 010\n<<: { c: 1 }')).toEqual({
      a: 'yes',
      b: 10,
      '<<': { c: 1 },
    });
  });

  const deep = '['.repeat(65) + ']'.repeat(65);
  const growing = Array.from({ length: 9 }, (_, level) =>
    level === 0
      ? 'a0: &a0 [x, x, x]'
      : `a${level}: &a${level} [${Array(9)
          .fill(`*a${level - 1}`)
          .join(', ')}]`,
  ).join('\n');

  test.each([
    ['a tag of one’s own', 'a: !length 3', /line 1, column 4: a tag/],
    ['a tag that the core schema lacks', 'a: !!binary aGk=', /line 1, column 4: a tag/],
    [
      'a tag that a directive makes',
      '%TAG ! tag:example.org,2000:\n---\na: !foo 1',
      /line 3, column 4: a tag/,
    ],
    ['a directive that is not known', '%YAML 3.0\n---\na: 1', /line 1/],
    ['a name given twice', 'a: 1\nb: 2\na: 3', /line 3, column 1: the name "a" is given twice/],
    ['a name given twice further in', 'b: { a: 1, "a": 3 }', /line 1, column 12: the name "a"/],
    ['a second document', 'a: 1\n---\nb: 2', /line 2, column 1: a second document/],
    ['a tab as indentation', 'a:\n\tb: 1', /line 2, column 1: a tab/],
    ['a second colon', 'a: b: c', /line 1, column 4: a second colon/],
    ['a bracket that is not closed', '{ "a": 1', /line 1, column \d+/],
    ['a list as a name', '? [a]\n: b', /line 1, column 3: a name must be text/],
    ['an endless number', 'a: .inf', /line 1, column 4: this number/],
    ['no number', 'a: [1, .nan]', /line 1, column 8: this number/],
    ['a number too large', 'a: 1e999', /line 1, column 4: this number/],
    ['an alias of nothing', 'a: *b', /has no anchor/],
    ['an alias of itself', '&a [*a]', /without end/],
    ['aliases that multiply', growing, /without end/],
    ['deep nesting', deep, /the YAML is nested more than 64 deep/],
    ['nesting beyond any stack', '[ '.repeat(50_000), /nested far too deep/],
    ['an unsafe name', '__proto__: { a: 1 }', /"__proto__" is not allowed/],
    ['nothing', '', /the YAML is empty/],
    ['a comment alone', '# to do', /the YAML is empty/],
  ])('refuses %s', async (_name, text, words) => {
    await expect(read(text)).rejects.toThrow(words);
    await expect(read(text)).rejects.toMatchObject({ name: 'UnreadableJson' });
  });

  test('refuses what is not UTF-8', async () => {
    await expect(readYaml(Uint8Array.of(0xff, 0xfe, 0x61, 0))).rejects.toThrow('not valid UTF-8');
  });
});

describe('a spec in a YAML file', () => {
  const asYaml = (spec: unknown) => `# for Tuesday\n${stringify(spec)}`;
  const sheet = { style: 'twin-sleeve', stock: { size: 'iso-a3' } };

  test.each(folderCommands.map(({ name }) => name))(
    'hemfold %s makes of it what it makes of JSON',
    async (name) => {
      const folder = await tempFolder();
      const spec = name === 'possible' ? sheet : firstSpec;
      const files = [
        ['spec.json', JSON.stringify(spec)],
        ['spec.yaml', asYaml(spec)],
        ['SPEC.YML', asYaml(spec)],
      ] as const;
      const made: unknown[] = [];
      for (const [file, text] of files) {
        writeFileSync(join(folder, file), text);
        made.push(await runHemfold([name, join(folder, file)]));
      }
      expect(made[0]).toMatchObject({ code: 0, errors: '' });
      expect(made[1]).toEqual(made[0]);
      expect(made[2]).toEqual(made[0]);
    },
  );

  test('the same YAML under another ending is JSON, and refused', async () => {
    const file = join(await tempFolder(), 'spec.txt');
    writeFileSync(file, asYaml(firstSpec));
    expect((await runHemfold(['plan', file])).errors).toContain('the JSON is malformed');
  });

  test.each([
    [
      'style: twin-sleeve\nstok: 1\n',
      /^\S+spec\.yaml: The input is not valid\n {2}\/stok: "stok" is not known/,
    ],
    ['style: twin-sleeve\n\tstock: 1\n', /^\S+spec\.yaml: the YAML is malformed at line 2, column 1: a tab/],
  ])('is refused with 2, by file and place', async (text, words) => {
    const file = join(await tempFolder(), 'spec.yaml');
    writeFileSync(file, text);
    const { code, output, errors } = await runHemfold(['svg', file]);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(words);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });
});
