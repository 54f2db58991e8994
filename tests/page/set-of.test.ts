import { expect, test } from 'vitest';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { catalogue } from '../../src/page/ask/catalogue.ts';
import { methods } from '../../src/page/ask/methods.ts';
import { prepareFor } from '../../src/page/ask/tools.ts';
import type { Spec } from '../../src/page/spec/pointer.ts';
import { setOf } from '../../src/page/spec/set-of.ts';
import { cutPieces } from '../../src/sets/cut-pieces.ts';

const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 };
const second = 'Second paper';
const papers: readonly Spec[] = [
  {},
  { stock: { size: 'iso-a3', turned: true, caliper: '0.23 mm' } },
  { stock: { size: 'iso-a3', turned: false }, prefer: 'least-paper' },
  { stock: { name: 'chart', width: '500 mm', height: '430 mm', caliper: '0.2 mm' }, units: 'in' },
];

const cases = catalogue().styles.flatMap(({ name, lengths }) =>
  papers.map((paper) => ({
    spec: { style: name, units: 'mm', contents, ...paper } satisfies Spec,
    lengths: lengths.map(({ path }) => path),
  })),
);

test('a set holds the very folder that is on the table, of any style and paper', async () => {
  let tried = 0;
  for (const { spec, lengths } of cases) {
    const answer = methods.fold(spec);
    if (answer.state !== 'folded') continue;
    tried++;
    const { blank, closed } = answer.plan;
    const set = setSpec.parse(setOf({ spec, swapped: false }, answer.plan, { kits: 6, lengths, second }));
    const [folder] = await cutPieces(set);
    expect(set.kits).toBe(6);
    expect(folder?.closed, spec.style).toMatchObject({
      width: closed.width.mm * 1e6,
      height: closed.height.mm * 1e6,
    });
    expect(folder?.blank, spec.style).toMatchObject({
      width: blank.width.mm * 1e6,
      height: blank.height.mm * 1e6,
    });
  }
  expect(tried).toBeGreaterThan(20);
});

test('its machine, its way of drawing and the swap of its faces become the set’s', () => {
  const spec: Spec = {
    style: 'twin-sleeve',
    contents,
    stock: { size: 'iso-a3' },
    cutter: { width: '12 in', height: '24 in' },
    convention: { scores: 'perforated' },
  };
  const answer = methods.fold({ style: spec.style ?? '', contents, stock: { size: 'iso-a3' } });
  if (answer.state !== 'folded') throw new Error('an A3 sheet holds it');
  expect(setOf({ spec, swapped: true }, answer.plan, { kits: 3, lengths: [], second })).toEqual({
    kits: 3,
    pieces: [{ name: 'folder', make: { style: 'twin-sleeve', contents }, shows: 'inside' }],
    papers: [{ size: 'iso-a3' }],
    cutter: spec.cutter,
    convention: spec.convention,
  });
});

/** What the core makes of a spec that can be folded. */
function planOf(spec: Spec) {
  const answer = methods.fold(spec);
  if (answer.state !== 'folded') throw new Error(`it cannot be folded: ${answer.state}`);
  return answer.plan;
}

test.each([true, false])('a one-way sheet that lies turned keeps its name and its print: %s', (oneWay) => {
  const spec = {
    style: 'twin-sleeve',
    contents,
    stock: { size: 'iso-a3', turned: true, caliper: '0.23 mm', oneWay, printPair: 'same-way' },
  };
  const set = setSpec.parse(setOf({ spec, swapped: false }, planOf(spec), { kits: 2, lengths: [], second }));
  // up of the print runs along no side that a paper of a set could say
  expect(set.papers).toEqual([
    expect.objectContaining({ name: 'ISO A3', width: 420e6, height: 297e6, caliper: 230_000 }),
  ]);
  expect(set.papers[0]).not.toHaveProperty('oneWay');
  expect(set.papers[0]).not.toHaveProperty('printPair');
  expect(set.pieces[0]?.turns).toBe(oneWay ? 'none' : undefined);
});

test('a set has the inlays and frames of its folder too, from a second paper of the same size', async () => {
  const circle = { shape: 'circle', diameter: '30 mm' };
  const knockout = { kind: 'figure', on: { place: 'front cover' }, figure: circle };
  const spec = {
    style: 'twin-sleeve',
    contents,
    stock: { size: 'iso-a3', oneWay: true, name: second },
    knockouts: [{ ...knockout, inlay: { margin: '6 mm', frame: { width: '8 mm' } } }],
  };
  await prepareFor(spec);
  const set = setOf({ spec, swapped: false }, planOf(spec), { kits: 4, lengths: [], second });
  expect(set.papers).toEqual([spec.stock, { name: `${second} 2`, size: 'iso-a3' }]);
  const cut = await cutPieces(setSpec.parse(set));
  expect(cut.map(({ name, paper, quantity }) => [name, paper, quantity])).toEqual([
    ['folder', 0, 5],
    ['inlay-1', 1, 5],
    ['frame-1', 1, 5],
  ]);
  expect((cut[1]?.blank.width ?? 0) / 1e6).toBeCloseTo(42, 2);
});
