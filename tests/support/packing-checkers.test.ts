import { describe, expect, test } from 'vitest';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import type { Nesting, Placed, SheetLayout } from '../../shared/nesting/nesting.ts';
import { nestingFaults } from './nesting-faults.ts';
import { cutsThrough, packingFaults } from './packing-faults.ts';
import { fewestSheetsByTrying, fitsByTrying } from './try-all.ts';

describe('the checker of nestings catches', () => {
  const spec: NestInput = {
    pieces: [
      { name: 'card', width: 40, height: 60, count: 4, turns: 'none', paper: 'card', face: 'A' },
      { name: 'tag', width: 20, height: 30, count: 3, paper: 'card' },
    ],
    sheets: [
      { paper: 'card', width: 100, height: 140, count: 2, margin: 5 },
      { paper: 'foil', width: 100, height: 140 },
    ],
    gap: 2,
  };
  const good = runToEnd(nest(spec));
  const [first] = good.layouts as [SheetLayout];
  const withPlace = (change: (placed: Placed) => Placed): Nesting => ({
    ...good,
    layouts: [
      { ...first, placed: first.placed.map((placed, at) => (at === 0 ? change(placed) : placed)) },
      ...good.layouts.slice(1),
    ],
  });
  const withLayout = (change: Partial<SheetLayout>): Nesting => ({
    ...good,
    layouts: [{ ...first, ...change }, ...good.layouts.slice(1)],
  });

  test('nothing in a good one', () => {
    expect(nestingFaults(spec, good)).toEqual([]);
  });

  test.each<[string, Nesting]>([
    [
      'a piece moved onto another',
      withPlace((placed) => ({ ...placed, x: first.placed[1]?.x ?? 0, y: first.placed[1]?.y ?? 0 })),
    ],
    ['a gap too small by one', withPlace((placed) => ({ ...placed, x: placed.x + 1 }))],
    ['a piece in the margin', withPlace((placed) => ({ ...placed, x: 4 }))],
    ['a piece of another size', withPlace((placed) => ({ ...placed, width: placed.width - 1 }))],
    [
      'a piece turned that may not',
      withPlace((placed) => ({ ...placed, width: placed.height, height: placed.width, turn: 90 })),
    ],
    ['part of a nanometre', withPlace((placed) => ({ ...placed, y: placed.y + 0.5 }))],
    ['a piece that there is not', withPlace((placed) => ({ ...placed, piece: 9 }))],
    ['one piece too few', withLayout({ placed: first.placed.slice(1) })],
    ['a sheet too many', withLayout({ times: first.times + 3 })],
    ['the wrong paper', withLayout({ sheet: 1 })],
    ['the wrong face', withLayout({ face: 'B' })],
    ['a wrong number of sheets', { ...good, sheets: good.sheets + 1 }],
    ['a bound above the result', { ...good, bound: good.sheets + 1, gap: -1 }],
    ['a proof with a gap', { ...good, bound: good.sheets - 1, gap: 1, proved: true }],
  ])('%s', (_, nesting) => {
    expect(nestingFaults(spec, nesting)).not.toEqual([]);
  });
});

describe('the checker of packings catches', () => {
  const boxes = [{ width: 2, height: 3, count: 2, turns: false }];
  const spot = { box: 0, x: 0, y: 0, width: 2, height: 3, turned: false };
  test.each([
    ['overlap', [spot, { ...spot, x: 1 }]],
    ['what lies outside', [spot, { ...spot, x: 3 }]],
    ['a wrong turn', [spot, { ...spot, x: 2, width: 3, height: 2, turned: true }]],
    ['a wrong size', [spot, { ...spot, x: 2, height: 2 }]],
    ['what is missing', [spot]],
    ['one too many', [spot, { ...spot, x: 2 }, { ...spot, y: 3 }]],
  ])('%s', (_, spots) => {
    expect(packingFaults(boxes, spots, 4, 6, true)).not.toEqual([]);
  });

  test('nothing in a good one', () => {
    expect(packingFaults(boxes, [spot, { ...spot, x: 2 }], 4, 6, true)).toEqual([]);
  });

  test('a pinwheel as what no straight cut parts', () => {
    const lie = (x: number, y: number, width: number, height: number) => ({ ...spot, x, y, width, height });
    const wheel = [lie(0, 0, 2, 1), lie(2, 0, 1, 2), lie(1, 2, 2, 1), lie(0, 1, 1, 2), lie(1, 1, 1, 1)];
    expect(cutsThrough(wheel)).toBe(false);
    expect(cutsThrough(wheel.slice(1))).toBe(true);
  });
});

test('trying all positions finds a pinwheel, and counts sheets', () => {
  const wheel = [
    { width: 2, height: 1, count: 2, turns: false },
    { width: 1, height: 2, count: 2, turns: false },
    { width: 1, height: 1, count: 1, turns: false },
  ];
  expect(fitsByTrying(wheel, 3, 3)).toBe(true);
  expect(fitsByTrying([...wheel, { width: 1, height: 1, count: 1, turns: false }], 3, 3)).toBe(false);
  expect(fewestSheetsByTrying([{ width: 2, height: 2, count: 3, turns: false }], 3, 4)).toBe(2);
});
