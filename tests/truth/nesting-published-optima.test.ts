import { describe, expect, test } from 'vitest';
import { bestGuillotine } from '../../shared/nesting/best-guillotine.ts';
import { bestValue, type ValuedBox } from '../../shared/nesting/best-value.ts';
import { fitTogether } from '../../shared/nesting/fit-together.ts';
import { guillotineTable } from '../../shared/nesting/guillotine-table.ts';
import { packStrip } from '../../shared/nesting/pack-strip.ts';
import { cutsThrough, packingFaults } from '../support/packing-faults.ts';

/*
 * Published optima of packing and cutting problems. Not here, for want of their items: CGCUT3, OF2, NGCUT3.
 */

/** Items as the papers list them: `width,height` and, where given, how many at most and the value of each. */
const items = (text: string, { turns = false, count = 1 } = {}): ValuedBox[] =>
  text
    .trim()
    .split(/\s+/u)
    .map((item) => {
      const [width = 0, height = 0, most = count, value = width * height] = item.split(',').map(Number);
      return { width, height, count: most, value, turns };
    });

const worthOf = (boxes: readonly ValuedBox[], spots: readonly { readonly box: number }[]) =>
  spots.reduce((sum, { box }) => sum + (boxes[box]?.value ?? 0), 0);

describe('strip packing: Hopper & Turton, Eur. J. Oper. Res. 128 (2001) 34-57, Table 1, class C1: strip 20 wide, least height 20', () => {
  const problems = {
    P1: '2,12 7,12 8,6 3,6 3,5 5,5 3,12 3,7 5,7 2,6 3,2 4,2 3,4 4,4 9,2 11,2',
    P2: '4,1 4,5 9,4 3,5 3,9 1,4 5,3 4,1 5,5 7,2 9,3 3,13 2,8 15,4 5,4 10,6 7,2',
    P3: '4,14 5,2 2,2 9,7 5,5 2,5 7,7 3,5 6,5 3,2 6,2 4,6 6,3 10,3 6,3 10,3',
  };
  for (const [name, text] of Object.entries(problems))
    test.each([false, true])(`C1 ${name}, turning: %s`, (turns) => {
      const boxes = items(text, { turns });
      // typed in right: the paper says that the items fill the strip to its height without a gap
      expect(boxes.reduce((sum, box) => sum + box.width * box.height, 0)).toBe(20 * 20);
      const strip = packStrip(boxes, 20, { seed: 1, evaluations: 100, maxNodes: 1_000_000 });
      expect(strip).toMatchObject({ height: 20, bound: 20, proved: true });
      expect(packingFaults(boxes, strip.spots, 20, 20, true)).toEqual([]);
    });
});

describe('the most value by straight cuts from edge to edge, counts limited, no turning', () => {
  const wang =
    '31,43,1 30,41,1 29,39,1 28,38,1 27,37,1 26,36,1 25,35,2 24,34,2 33,23,3 22,32,2 31,21,3 29,18,3 17,27,2 16,25,4 15,24,3 23,14,4 21,12,3 19,11,4 9,17,1';
  const cgcut1 = '8,4,2,66 3,7,1,35 8,2,3,24 3,4,5,17 3,3,2,11 3,2,2,8 2,1,1,2';
  const cgcut2 =
    '21,22,1,582 31,13,1,403 9,35,3,315 9,24,3,216 30,7,2,210 11,13,3,143 10,14,1,140 14,8,3,110 12,8,3,94 13,7,3,90';
  const of1 = '29,5,1 9,39,4 55,9,1 31,15,1 11,16,2 23,21,3 29,14,4 16,19,3 9,36,2 22,4,2';
  test.each([
    // Christofides & Whitlock, Oper. Res. 25 (1977) 30-44, Table 2
    { name: 'CGCUT1', text: cgcut1, sheet: [15, 10], optimum: 244, unlimited: 249 },
    { name: 'CGCUT2', text: cgcut2, sheet: [40, 70], optimum: 2892, unlimited: 3076 },
    // Wang, Oper. Res. 31 (1983) 573-586; the optima of 2 and 3 by exact search of ours and of another program
    { name: 'WANG1', text: wang, sheet: [33, 69], optimum: 2277, unlimited: 2277 },
    { name: 'WANG2', text: wang, sheet: [39, 70], optimum: 2694, unlimited: 2694 },
    { name: 'WANG3', text: wang, sheet: [40, 70], optimum: 2721, unlimited: 2743 },
    // Oliveira & Ferreira, Eur. J. Oper. Res. 44 (1990) 256-266
    { name: 'OF1', text: of1, sheet: [70, 40], optimum: 2737, unlimited: 2758 },
  ])('$name: $optimum', ({ text, sheet: [width = 0, height = 0], optimum, unlimited }) => {
    const boxes = items(text);
    const best = bestGuillotine(boxes, width, height, 200_000);
    expect(best).toMatchObject({ value: optimum, bound: optimum, proved: true });
    expect(worthOf(boxes, best.spots)).toBe(optimum);
    expect(packingFaults(boxes, best.spots, width, height, false)).toEqual([]);
    expect(cutsThrough(best.spots)).toBe(true);
    // as often as they fit: packlib's record of the same papers' problems
    const endless = guillotineTable(boxes, width, height, false);
    expect(endless.worth(width, height)).toBe(unlimited);
    expect(worthOf(boxes, endless.layoutOf(width, height))).toBe(unlimited);
  });
});

describe('the most value cut in any way, counts limited, no turning: Beasley, Oper. Res. 33 (1985) 49-64', () => {
  test.each([
    { name: 'NGCUT1', text: '3,7,2,35 8,2,2,40 10,2,1,27 5,4,3,23 2,9,2,43', sheet: [10, 10], optimum: 164 },
    {
      name: 'NGCUT2',
      text: '1,10,3,28 5,3,2,40 9,3,3,63 6,1,3,13 3,8,3,31 4,1,1,10 7,3,2,44',
      sheet: [10, 10],
      optimum: 230,
    },
    { name: 'NGCUT4', text: '15,2,2,34 7,3,1,27 9,1,1,14 8,3,1,71 12,2,2,61', sheet: [15, 10], optimum: 268 },
  ])('$name: $optimum', ({ text, sheet: [width = 0, height = 0], optimum }) => {
    const boxes = items(text);
    const best = bestValue(boxes, width, height, { maxNodes: 1_000_000, nodesPerChoice: 100_000 });
    expect(best).toMatchObject({ value: optimum, bound: optimum, proved: true });
    expect(worthOf(boxes, best.spots)).toBe(optimum);
    expect(packingFaults(boxes, best.spots, width, height, false)).toEqual([]);
    // published as the optimum for straight cuts too
    expect(bestGuillotine(boxes, width, height, 100_000)).toMatchObject({ value: optimum, proved: true });
  });
});

describe('straight cuts, every item as often as it fits: gcut1, Beasley, J. Oper. Res. Soc. 36 (1985) 297-306', () => {
  const gcut1 = '167,184 114,118 167,152 83,140 70,86 143,166 120,160 66,148 87,141 69,165';
  test.each([
    { turns: false, optimum: 56_460 },
    { turns: true, optimum: 58_136 },
  ])('sheet 250 × 250, turning $turns: $optimum', ({ turns, optimum }) => {
    const boxes = items(gcut1, { turns, count: 10 });
    const table = guillotineTable(boxes, 250, 250, false);
    expect(table.complete).toBe(true);
    expect(table.worth(250, 250)).toBe(optimum);
    const spots = table.layoutOf(250, 250);
    expect(worthOf(boxes, spots)).toBe(optimum);
    expect(packingFaults(boxes, spots, 250, 250, false)).toEqual([]);
    expect(cutsThrough(spots)).toBe(true);
  });
});

describe('squares in a square or rectangle', () => {
  const squares = (sides: readonly number[]) =>
    sides.map((side) => ({ width: side, height: side, count: 1, turns: false }));

  // OEIS A005842: side of the smallest square that holds squares of sides 1 to n
  test.each([1, 3, 5, 7, 9, 11, 13, 15, 18].map((side, index) => ({ n: index + 1, side })))(
    'sides 1 to $n fit in $side and not in one less',
    ({ n, side }) => {
      const boxes = squares(Array.from({ length: n }, (_, index) => index + 1));
      const fitting = fitTogether(boxes, side, side, 1_000_000);
      expect(packingFaults(boxes, fitting.spots ?? [], side, side, true)).toEqual([]);
      if (side > 1)
        expect(fitTogether(boxes, side - 1, side - 1, 1_000_000)).toMatchObject({ settled: true });
      expect(fitTogether(boxes, side - 1, side - 1, 1_000_000).spots).toBeUndefined();
    },
  );

  test('nine different squares fill 33 × 32: Moroń, Przegl. Mat.-Fiz. 3 (1925)', () => {
    const boxes = squares([18, 15, 14, 10, 9, 8, 7, 4, 1]);
    const fitting = fitTogether(boxes, 33, 32, 100_000);
    expect(packingFaults(boxes, fitting.spots ?? [], 33, 32, true)).toEqual([]);
  });

  test('21 different squares fill 112 × 112: Duijvestijn, J. Combin. Theory B 25 (1978) 240-243', () => {
    const sides = [50, 42, 37, 35, 33, 29, 27, 25, 24, 19, 18, 17, 16, 15, 11, 9, 8, 7, 6, 4, 2];
    const fitting = fitTogether(squares(sides), 112, 112, 1_000_000);
    expect(packingFaults(squares(sides), fitting.spots ?? [], 112, 112, true)).toEqual([]);
  });

  test('four 2 × 1, two of them on end, around a 1 × 1 fill 3 × 3, but not by straight cuts (textbook)', () => {
    const boxes = [
      { width: 2, height: 1, count: 2, turns: false, value: 2 },
      { width: 1, height: 2, count: 2, turns: false, value: 2 },
      { width: 1, height: 1, count: 1, turns: false, value: 1 },
    ];
    const any = bestValue(boxes, 3, 3, { maxNodes: 10_000, nodesPerChoice: 1000 });
    expect(any).toMatchObject({ value: 9, proved: true });
    expect(cutsThrough(any.spots)).toBe(false);
    // by hand: the first cut leaves 1 × 3 and 2 × 3, which take one upright, the unit and two lying ones
    expect(bestGuillotine(boxes, 3, 3, 10_000)).toMatchObject({ value: 7, proved: true });
  });
});
