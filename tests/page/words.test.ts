import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describeLength } from '../../shared/lengths/show-length.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { catalogue } from '../../src/page/ask/catalogue.ts';
import { madeFor } from '../../src/page/ask/style-form.ts';
import { words as de } from '../../src/page/words/de.ts';
import { en, type Words } from '../../src/page/words/en.ts';
import { words as es } from '../../src/page/words/es.ts';
import { words as fr } from '../../src/page/words/fr.ts';
import { lengthForSpec, lengthIn } from '../../src/page/words/lengths.ts';
import { phrases as dePhrases } from '../../src/page/words/phrases/de.ts';
import { phrases as esPhrases } from '../../src/page/words/phrases/es.ts';
import { phrases as frPhrases } from '../../src/page/words/phrases/fr.ts';
import { counted, filled, preferred, speaker } from '../../src/page/words/say.ts';
import { type Phrases, teller } from '../../src/page/words/tell.ts';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';
import { saidAbout } from './said.ts';

const pageFolder = join(import.meta.dirname, '..', '..', 'src', 'page');
const source = globSync('**/*.{ts,tsx}', { cwd: pageFolder, exclude: ['words/*.ts', 'words/**/*.ts'] })
  .map((file) => readFileSync(join(pageFolder, file), 'utf8'))
  .join('\n');

const languages: readonly (readonly ['de' | 'fr' | 'es', Words, Phrases])[] = [
  ['de', de, dePhrases],
  ['fr', fr, frPhrases],
  ['es', es, esPhrases],
];

/** Ways of folding that the page tells of in every language; one that is new comes in English first. */
const told = new Set([
  'twin-sleeve',
  'pocket-folder',
  'slip-sleeve',
  'gate-wallet',
  'four-flap-wrap',
  'belly-band',
  'tuck-box',
  'envelope',
  'card-base',
  'tag',
  'insert',
]);

const slots = (text: string) => (text.match(/\{\w+\}/gu) ?? []).toSorted();

describe('what the page says itself', () => {
  test.each(languages)('has every name in %s, each with the same values in braces', (_, words) => {
    expect(Object.keys(words).toSorted()).toEqual(Object.keys(en).toSorted());
    for (const [name, text] of Object.entries(en)) {
      const own = words[name as keyof Words];
      expect(own.trim(), name).not.toBe('');
      expect(slots(own), name).toEqual(slots(text));
    }
  });

  test.each(languages)('is not left in English in %s', (_, words) => {
    const same = Object.entries(en).filter(
      ([name, text]) => /\p{L}{4,} \p{L}{3,}/u.test(text) && words[name as keyof Words] === text,
    );
    expect(same).toEqual([]);
  });

  test('has no name that nothing says', () => {
    /** Names that are put together from parts. */
    const stems = [...source.matchAll(/`([\w.-]+[.=/])\$\{/gu)].map(([, stem = '']) => stem);
    const counts = [...source.matchAll(/sayCount\(\s*'([\w.]+)'/gu)].map(([, stem]) => `${stem}.`);
    const silent = Object.keys(en).filter(
      (name) => !source.includes(`'${name}'`) && ![...stems, ...counts].some((stem) => name.startsWith(stem)),
    );
    expect(silent).toEqual([]);
  });

  test('is filled in, counted and set as each language does', () => {
    expect(filled('{a} and {b}', { a: 1, b: 'x' })).toBe('1 and x');
    expect(speaker(fr, 'fr')('keep.shared.licence', { licence: 'MIT' })).toBe('Licence\u00a0: MIT.');
    expect(counted('en', 'outcome.notes', 1)).toBe('outcome.notes.one');
    expect(counted('fr', 'outcome.notes', 0)).toBe('outcome.notes.one');
    expect(counted('de', 'outcome.notes', 0)).toBe('outcome.notes.other');
    expect(preferred(['pt-BR', 'es-MX', 'de'])).toBe('es');
    expect(preferred(['ja'])).toBe('en');
  });
});

const once = (collect: () => Promise<Set<string>>): (() => Promise<ReadonlySet<string>>) => {
  let texts: Promise<Set<string>> | undefined;
  return () => {
    texts ??= collect();
    return texts;
  };
};

const saidAboutAll = async (all: readonly unknown[]): Promise<string[]> =>
  (await Promise.all(all.map(saidAbout))).flat();

const sleeves = once(async () => {
  const texts = new Set<string>();
  await fc.assert(
    fc.asyncProperty(specs, async ({ spec, spelling }) => {
      for (const text of await saidAbout(spell(spec, spelling))) texts.add(text);
    }),
    { numRuns: 40 },
  );
  return texts;
});

const others = once(async () => {
  const contents = { item: { size: 'iso-a6' }, perPocket: 2 };
  const all = [...told].flatMap((style) => {
    const own = { contents: { contents }, card: { card: contents.item }, nothing: {} }[madeFor(style)];
    const spec = { style, units: 'mm', ...own };
    // some leave the choice of how tabs are held
    const locked = { ...spec, join: 'slots' };
    return folderSpec.safeParse(locked).success ? [spec, locked] : [spec];
  });
  const texts = await saidAboutAll(all);
  expect(texts.length).toBeGreaterThan(200);
  return new Set(texts);
});

describe.each(languages)('what the core says, in %s,', (language, _, phrases) => {
  const tell = teller(phrases, language);
  const unknown = (texts: readonly string[]) => texts.filter((text) => !tell(text).known);

  test('keeps what stands in braces', () => {
    for (const [english, own] of Object.entries(phrases)) {
      const [said, given] = [slots(own), slots(english)];
      expect(given, own).toEqual(expect.arrayContaining(said));
      expect([...new Set(given)], `${english} loses a value`).toEqual([...new Set(said)]);
    }
  });

  test('is told for every twin sleeve', async () => {
    // a paper keeps the name that its owner gave it
    expect(unknown([...(await sleeves())]).filter((text) => text !== 'Harbour chart paper')).toEqual([]);
  });

  test('is told for the other ways of folding', async () => {
    expect(unknown([...(await others())])).toEqual([]);
  });

  test('is told for what is cut out', async () => {
    const figure = (shape: object, more: object = {}) => ({
      kind: 'figure',
      on: { place: 'front cover' },
      figure: shape,
      ...more,
    });
    const circle = { shape: 'circle', diameter: '30 mm' };
    const svg = (inside: string) =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20">${inside}</svg>`;
    const ring = { repeat: 'ring', count: 6, radius: '20 mm' };
    const square = 'width="5" height="5"';
    const drawings = [
      'hello',
      '<svg',
      '<svg viewBox="0 0 20 20"></svg>',
      ...[
        '',
        'Light',
        '<text>Light</text>',
        '<style/>',
        '<image/>',
        '<use/>',
        '<line/>',
        '<linearGradient/>',
        '<path/>',
        '<path d="M0 0 Q"/>',
        '<path d="M0 0 L5 5" fill="none"/>',
        '<rect width="50" height="5"/>',
        '<rect width="5mm" height="5"/>',
        `<rect ${square} stroke="black"/>`,
        `<rect ${square} style="fill:red"/>`,
        `<rect ${square} class="red"/>`,
        `<rect ${square} fill="white"/>`,
        `<rect ${square} fill="url(#red)"/>`,
        `<rect ${square} opacity="0.3"/>`,
        `<defs><rect ${square}/></defs>`,
      ].map(svg),
    ];
    const lists: readonly (readonly object[])[] = [
      [figure({ shape: 'heart', width: '35 mm' }), figure(circle)],
      [figure(circle, { through: 'every-layer' }), figure({ shape: 'star', points: 5, diameter: '20 mm' })],
      [figure({ shape: 'circle', diameter: '1.2 mm' }, { name: 'sun' })],
      [figure(circle, { on: { place: 'front cover', anchor: 'left' } })],
      [figure({ shape: 'circle', diameter: '200 mm' }, { through: 'every-layer' })],
      [figure(circle, { on: { place: 'nowhere' } })],
      [figure({ shape: 'tag', width: '30 mm', height: '50 mm', eyelet: { diameter: '6 mm' } })],
      [{ kind: 'thumb-notch', pocket: 'front pocket', through: 'every-layer' }],
      [figure(circle, { repeat: ring })],
      [figure(circle, { repeat: { repeat: 'edge', length: '80 mm' } })],
      [figure({ shape: 'heart', width: '40 mm' }, { through: 'every-layer', repeat: ring })],
      [figure({ shape: 'rounded-rectangle', width: '100 mm', height: '1 mm', radius: '0.2 mm' })],
      [figure({ shape: 'circle', diameter: '118 mm' }, { through: 'every-layer' })],
      [{ kind: 'rounded-corners', place: 'front cover', radius: '60 mm' }],
      [{ kind: 'rounded-corners', place: 'spine', radius: '1 mm' }],
      [figure(circle, { inlay: { margin: '6 mm', frame: { width: '8 mm', raised: '1 mm' } } })],
      [figure({ artwork: 'M0 0 H40 V40 H0 Z M10 10 V30 H30 V10 Z', bridges: 'none' })],
      ...drawings.map((artwork) => [figure({ artwork, width: '20 mm' })]),
      [{ kind: 'rounded-corners', place: 'front cover', radius: '8 mm' }],
      [{ kind: 'ribbon-slots', on: { place: 'front cover' }, ribbon: '10 mm' }],
    ];
    for (const knockouts of lists) {
      const cutter = { width: '400 mm', height: '500 mm', leastCornerRadius: '1 mm' };
      const spec = {
        style: 'twin-sleeve',
        units: 'mm',
        contents: { item: { size: 'iso-a6' } },
        cutter,
        knockouts,
      };
      expect(unknown(await saidAbout(spec))).toEqual([]);
    }
  });

  test('is told of several knockouts at once, whatever they are called', async () => {
    const hole = (name: string, down: string) => ({
      kind: 'figure',
      name,
      on: { place: 'front cover', anchor: 'left', offset: { left: '5 mm', down } },
      figure: { shape: 'circle', diameter: '20 mm' },
    });
    const spec = {
      style: 'twin-sleeve',
      units: 'mm',
      contents: { item: { size: 'iso-a6' } },
      knockouts: [hole('sun and moon', '0 mm'), hole('beam', '21 mm'), hole('fog', '44 mm')],
    };
    const texts = await saidAbout(spec);
    expect(texts).toContainEqual(
      expect.stringMatching(/^“sun and moon”, “beam” and “fog” cut .*: the score stops/u),
    );
    expect(texts).toContainEqual(expect.stringMatching(/^between “sun and moon” and “beam” only/u));
    expect(unknown(texts)).toEqual([]);
  });

  test('is told of knockouts that spoil a lock', async () => {
    const spec = {
      style: 'pocket-folder',
      join: 'slots',
      units: 'mm',
      contents: { item: { size: 'iso-a6' } },
      knockouts: [
        {
          kind: 'figure',
          on: { place: 'front cover', anchor: 'bottom right', offset: { up: 10, left: 1 } },
          figure: { shape: 'circle', diameter: 60 },
          through: 'every-layer',
        },
      ],
    };
    const texts = await saidAbout(spec);
    expect(texts.some((text) => text.includes('tongue that holds'))).toBe(true);
    expect(texts.some((text) => text.includes('beside the slot'))).toBe(true);
    expect(unknown(texts)).toEqual([]);
  });

  test('is told for what cannot be folded or read', async () => {
    const sleeve = { style: 'twin-sleeve', units: 'mm' } as const;
    const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } };
    const asked: readonly unknown[] = [
      { ...sleeve, contents, stock: { size: 'craft-12x12' } },
      { ...sleeve, contents, stock: { size: 'craft-12x12', turned: true, oneWay: true } },
      {
        ...sleeve,
        contents: { ...contents, perPocket: 4 },
        stock: { size: 'iso-a4' },
        dimensions: { hem: '60 mm' },
      },
      { ...sleeve, contents, dimensions: { spine: '1 mm' } },
      {
        ...sleeve,
        contents,
        dimensions: { panel: { width: '50 mm' } },
        cutter: { width: '200 mm', height: '200 mm' },
      },
      {
        ...sleeve,
        dimensions: { panel: { height: '100 mm' }, topFlap: '150 mm' },
        stock: { size: 'iso-a3' },
      },
      { ...sleeve, dimensions: { spine: '10 mm' } },
      { ...sleeve, contents: { ...contents, item: { width: 'wide', height: '-3 mm' } } },
      { ...sleeve, contents: { ...contents, item: { width: '5 1/ in', height: '3 ells' } } },
      { ...sleeve, contents: { ...contents, item: { width: '0 mm', height: '1e3 mm' } } },
      { ...sleeve, contents: { ...contents, item: { width: '4/0 mm', height: '1,000.5 mm' } } },
      { ...sleeve, contents: { ...contents, item: { width: '99 mm' } } },
      { ...sleeve, contents: { ...contents, perPocket: 'two' }, stock: { size: 'iso-a3', grammage: 3 } },
      { ...sleeve, contents: { ...contents, perPocket: 2.5 }, stock: { size: 'iso-a3', grammage: 9000 } },
      { ...sleeve, contents, cutter: { width: '200 mm', height: '300 mm', margin: '150 mm' } },
      { ...sleeve, contents, stock: { size: 'us-tabloid' } },
      { ...sleeve, contents, stock: { size: 'iso-a33' } },
    ];
    expect(unknown(await saidAboutAll(asked))).toEqual([]);
  });

  test('is told of sizes, styles and conventions', () => {
    const { sizes, conventions, styles } = catalogue();
    expect(unknown(sizes.map(({ label }) => label))).toEqual([]);
    expect(unknown(conventions.map(({ description }) => description))).toEqual([]);
    const forms = styles.filter(({ name }) => told.has(name));
    expect(forms).toHaveLength(told.size);
    expect(
      unknown(
        forms.flatMap(({ title, summary, lengths }) => [
          title,
          summary,
          ...lengths.map((each) => each.title),
        ]),
      ),
    ).toEqual([]);
  });

  test.each([
    'a sentence that no core ever says',
    'a sentence that no core ever says, and the hem: the seam',
    'the circle and a sentence that no core ever says cut 3 mm',
    'the circle, the heart and what no core ever says',
  ])('stays English where nobody has told it yet, and says so: %s', (text) => {
    expect(tell(text)).toEqual({ text, known: false });
  });
});

describe('lengths', () => {
  test('are written as each language writes them', () => {
    expect(lengthIn('de', '1 3/4 in (44.45 mm)')).toBe('1 3/4 Zoll (44,45 mm)');
    expect(lengthIn('fr', '44.45 mm (1 3/4 in)')).toBe('44,45 mm (1 3/4 po)');
    expect(lengthIn('en', '44.45 mm')).toBe('44.45 mm');
  });

  test('are found wherever the core writes them', () => {
    const tell = teller({ 'it is {length} long': 'c’est long de {length}' }, 'fr');
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2e9 }), fc.constantFrom('inch', 'metric'), (nm, measure) => {
        const length = describeLength(nm, measure);
        expect(tell(`it is ${length} long`)).toEqual({
          text: `c’est long de ${lengthIn('fr', length)}`,
          known: true,
        });
      }),
    );
  });

  test.each([
    ['5 1/8', 'in', '5 1/8 in'],
    ['130', 'mm', '130 mm'],
    ['13,5', 'mm', '13.5 mm'],
    ['13,5 cm', 'mm', '13.5 cm'],
    ['5 ⅛', 'in', '5 ⅛ in'],
    ['4 Zoll', 'mm', '4 in'],
    ['4 po', 'mm', '4 in'],
    ['4 pulg.', 'mm', '4 in'],
    ['100 Millimeter', 'in', '100 mm'],
    ['wide', 'mm', 'wide'],
    ['5 1/', 'in', '5 1/'],
  ] as const)('%j typed in %s is %j', (typed, unit, held) => {
    expect(lengthForSpec(typed, unit)).toBe(held);
  });
});
