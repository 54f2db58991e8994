import { expect, test } from 'vitest';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { catalogue } from '../../src/page/ask/catalogue.ts';
import { methods } from '../../src/page/ask/methods.ts';
import type { Spec } from '../../src/page/spec/pointer.ts';
import { setOf } from '../../src/page/spec/set-of.ts';
import { cutPieces } from '../../src/sets/cut-pieces.ts';

const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 };
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
    const set = setSpec.parse(setOf({ spec, swapped: false }, answer.plan, lengths, 6));
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
  expect(setOf({ spec, swapped: true }, answer.plan, [], 3)).toEqual({
    kits: 3,
    pieces: [{ name: 'folder', make: { style: 'twin-sleeve', contents }, shows: 'inside' }],
    papers: [{ size: 'iso-a3' }],
    cutter: spec.cutter,
    convention: spec.convention,
  });
});
