import { describe, expect, test } from 'vitest';
import { convention } from '../../shared/drawing/convention.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { planSet } from '../../src/sets/plan-set.ts';
import { sheetsOf } from '../../src/sets/sheets-of-set.ts';
import { unzip } from '../sets/unzip.ts';
import { everyGroup, type ReadPath, type ReadSvg, readSvg } from '../support/read-svg.ts';

/** The pocket folder of `tests/truth/styles-by-hand.test.ts`: paper 0.3 mm, tape 6 mm, no grid. Millimetres. */
const folder = {
  style: 'pocket-folder',
  stock: { width: '700 mm', height: '700 mm', caliper: '0.3 mm', foldFactor: 0 },
  grid: 'none',
  glue: { width: '6 mm' },
  contents: {
    item: { width: '100 mm', height: '150 mm' },
    perPocket: 2,
    thickness: '2 mm',
    turned: false,
  },
  prefer: 'least-paper',
};

const draw = (more: object): ReadSvg => readSvg(svgOfFolder(folderSpec.parse({ ...folder, ...more })));
const guided = (layers: object, more: object = {}): object => ({ convention: { layers, ...more } });

const idsIn = (read: ReadSvg) => everyGroup(read.groups).map(({ id }) => id);
const pathsOf = (read: ReadSvg, id: string): readonly ReadPath[] =>
  everyGroup(read.groups).find((group) => group.id === id)?.paths ?? [];

/** Left, top, right and bottom of a path. */
function boxOf({ subpaths }: ReadPath): readonly number[] {
  const points = subpaths.flatMap(({ pieces }) => pieces.flat());
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

const boxesOf = (read: ReadSvg, id: string) => pathsOf(read, id).map(boxOf);

describe('the guide', () => {
  test('is not there unless it is asked for', () => {
    for (const chosen of [undefined, {}, { layers: { cut: {} } }, { layers: { guide: { off: true } } }])
      expect(idsIn(draw({ convention: chosen })).filter((id) => id.startsWith('guide'))).toEqual([]);
  });

  test('shows each strip where it is by hand', () => {
    // columns: tab 9.5, cover 120, spine 9.9, cover 120, tab 9.5; rows: cover 158, pocket 79
    const read = draw(guided({ guide: {} }));
    // tabs begin 2 mm from fold and mouth and taper by 2: their tape is 1.5 mm inside the free edges
    const [top, bottom] = [158 + 2 + 2 + 1.5, 158 + 79 - 2 - 2 - 1.5];
    expect(boxesOf(read, 'guide-glue-outside')).toEqual([
      [1.5, top, 7.5, bottom],
      [268.9 - 7.5, top, 268.9 - 1.5, bottom],
    ]);
    // at the spine a notch of 1.5 that widens by 3, then 1.5 to the tape; 2 below the score, 3 above the mouth
    expect(boxesOf(read, 'guide-glue-inside')).toEqual([
      [129.5 - 12, 160, 129.5 - 6, 234],
      [139.4 + 6, 160, 139.4 + 12, 234],
    ]);
    // folded up at 158 and the tabs folded in at 9.5 and 259.4: y goes to 316 − y, x to 19 − x and 518.8 − x
    const met = boxesOf(read, 'guide-bare-inside').toSorted(([one = 0], [other = 0]) => one - other);
    expect(met).toEqual([
      [11.5, 316 - bottom, 17.5, 316 - top],
      [117.5, 82, 123.5, 156],
      [145.4, 82, 151.4, 156],
      [251.4, 316 - bottom, 257.4, 316 - top],
    ]);
  });

  test('may show one kind alone, in a style of its own', () => {
    const read = draw(guided({ guideKeepOut: { colour: '#000000', lineType: 'continuous' } }));
    const groups = idsIn(read).filter((id) => id.startsWith('guide'));
    expect(groups).toEqual(['guide', 'guide-keep-out-inside', 'guide-keep-out-outside']);
    const attributes = everyGroup(read.groups).find(({ id }) => id === 'guide-keep-out-inside')?.attributes;
    expect(attributes).toMatchObject({ fill: 'none', stroke: '#000000' });
    expect(attributes).not.toHaveProperty('stroke-dasharray');
  });

  test('for a pen shows what is on the face that lies up, mirrored with it', () => {
    const both = draw(guided({ guide: {} }));
    for (const [sheetLies, face, other] of [
      ['inside-up', 'inside', 'outside'],
      ['outside-up', 'outside', 'inside'],
    ] as const) {
      const pen = draw(guided({ guide: { faces: 'up' } }, { sheetLies }));
      expect(idsIn(pen).some((id) => id.startsWith('guide') && id.endsWith(other))).toBe(false);
      const mirrored = ([left = 0, top = 0, right = 0, bottom = 0]: readonly number[]) =>
        face === 'outside'
          ? [both.width - right, top, both.width - left, bottom]
          : [left, top, right, bottom];
      const [shown, expected] = [pen, both].map((read) => boxesOf(read, `guide-glue-${face}`));
      expect(shown?.length).toBe(2);
      expect(shown).toEqual(expected?.map((box) => mirrored(box).map((value) => expect.closeTo(value, 2))));
      // what is on the face that lies down would be dashed
      const group = everyGroup(pen.groups).find(({ id }) => id === `guide-glue-${face}`);
      expect(group?.attributes).not.toHaveProperty('stroke-dasharray');
    }
  });

  test('moves with an outline that a kerf makes larger', () => {
    const plain = boxesOf(draw(guided({ guide: {} }, { outline: 'always' })), 'guide-glue-outside');
    const cutter = { width: '700 mm', height: '700 mm', kerf: '0.2 mm' };
    const wide = draw({ ...guided({ guide: {} }, { outline: 'always' }), cutter });
    expect(boxesOf(wide, 'guide-glue-outside')).toEqual(
      plain.map((box) => box.map((value) => expect.closeTo(value + 0.1, 3))),
    );
  });

  test('says that it is never cut, and cannot be filled', () => {
    expect(draw(guided({ guide: {} })).description).toMatch(/never cut/u);
    expect(draw({}).description).not.toMatch(/guide/u);
    const filled = convention.safeParse({ layers: { guide: { paint: 'fill' } } });
    expect(filled.error?.issues[0]?.message).toMatch(/never cut/u);
  });
});

test('a set’s sheets show the guide of every piece, moved and turned with it', async () => {
  const { stock: _, prefer: __, ...make } = folder;
  const body = {
    kits: 3,
    papers: [{ name: 'Harbour chart', width: '300 mm', height: '850 mm', caliper: '0.3 mm', foldFactor: 0 }],
    pieces: [{ name: 'folder', paper: 'Harbour chart', make }],
    convention: { layers: { guide: {} }, sheetLies: 'outside-up' },
  };
  const planned = await planSet(setSpec.parse(body), {
    run: (input) => Promise.resolve(runToEnd(nest({ ...input, evaluations: 100 }))),
  });
  const sheets = unzip(sheetsOf(planned)).filter(({ name }) => /sheet-?\d+.*\.svg$/u.test(name));
  expect(sheets.length).toBeGreaterThan(0);
  for (const { text } of sheets) {
    const read = readSvg(text);
    const tabs = boxesOf(read, 'guide-glue-outside');
    const pieces = new Set(pathsOf(read, 'score-valley').map(({ id }) => /^piece-\d+/u.exec(id)?.[0]));
    expect(tabs.length).toBe(2 * pieces.size);
    expect(boxesOf(read, 'guide-glue-inside').length).toBe(2 * pieces.size);
    for (const [left = 0, top = 0, right = 0, bottom = 0] of tabs) {
      // tape of 6 mm, as long as by hand, and inside of the sheet by the margin of a tab
      const sides = [right - left, bottom - top].toSorted((p, q) => p - q);
      expect(sides).toEqual([expect.closeTo(6, 2), expect.closeTo(79 - 11, 2)]);
      expect(Math.min(left, top, read.width - right, read.height - bottom)).toBeGreaterThan(1.49);
    }
  }
});
