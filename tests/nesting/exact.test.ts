import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestGuillotine } from '../../shared/nesting/best-guillotine.ts';
import { bestValue } from '../../shared/nesting/best-value.ts';
import { fitTogether } from '../../shared/nesting/fit-together.ts';
import { guillotineTable } from '../../shared/nesting/guillotine-table.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { packStrip } from '../../shared/nesting/pack-strip.ts';
import { pinwheel } from '../../shared/nesting/pinwheel.ts';
import { scalesOf, weigh } from '../../shared/nesting/scales.ts';
import { valueBound } from '../../shared/nesting/value-bound.ts';
import { highsSolver } from '../../src/nesting/highs-solver.ts';
import { cutsThrough, packingFaults } from '../support/packing-faults.ts';
import { fewestSheetsByTrying, fitsByTrying } from '../support/try-all.ts';

const solve = await highsSolver();

const box = (longest: number, most: number) =>
  fc.record({
    width: fc.integer({ min: 1, max: longest }),
    height: fc.integer({ min: 1, max: longest }),
    count: fc.integer({ min: 1, max: most }),
    turns: fc.boolean(),
  });
const sheet = fc.record({ width: fc.integer({ min: 4, max: 7 }), height: fc.integer({ min: 4, max: 7 }) });

describe('against trying every position', () => {
  test('a packing of one sheet is found if there is one, and only then', () => {
    fc.assert(
      fc.property(fc.array(box(5, 3), { minLength: 1, maxLength: 4 }), sheet, (boxes, { width, height }) => {
        const area = boxes.reduce((sum, each) => sum + each.count * each.width * each.height, 0);
        fc.pre(area <= width * height && boxes.reduce((sum, { count }) => sum + count, 0) <= 7);
        const fitting = fitTogether(boxes, width, height, 100_000);
        expect(fitting.settled).toBe(true);
        expect(fitting.spots !== undefined).toBe(fitsByTrying(boxes, width, height));
        if (fitting.spots !== undefined)
          expect(packingFaults(boxes, fitting.spots, width, height, true)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test('what fits weighs no more than one sheet, by every scale', () => {
    fc.assert(
      fc.property(fc.array(box(5, 2), { minLength: 1, maxLength: 4 }), sheet, (boxes, { width, height }) => {
        fc.pre(boxes.reduce((sum, { count }) => sum + count, 0) <= 6);
        if (!fitsByTrying(boxes, width, height)) return;
        const counts = boxes.map(({ count }) => count);
        for (const scale of scalesOf(boxes, width, height))
          expect(weigh(scale, counts)).toBeLessThanOrEqual(1 + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test('the number of sheets is the least, and is proved', () => {
    fc.assert(
      fc.property(fc.array(box(4, 3), { minLength: 1, maxLength: 3 }), sheet, (boxes, { width, height }) => {
        fc.pre(boxes.reduce((sum, { count }) => sum + count, 0) <= 6);
        const pieces = boxes.map(({ turns, ...each }) => ({
          ...each,
          name: 'piece',
          paper: 'card',
          turns: turns ? ('quarter' as const) : ('none' as const),
        }));
        const nesting = runToEnd(nest({ pieces, sheets: [{ paper: 'card', width, height }] }, solve));
        expect(nesting).toMatchObject({ sheets: fewestSheetsByTrying(boxes, width, height), proved: true });
      }),
      { numRuns: 150 },
    );
  });
});

describe('the most value', () => {
  const valued = fc.array(
    fc.tuple(box(5, 3), fc.integer({ min: 0, max: 20 })).map(([each, value]) => ({ ...each, value })),
    { minLength: 1, maxLength: 4 },
  );

  test('cut in any way is at least that of straight cuts, and at most what the knapsacks allow', () => {
    fc.assert(
      fc.property(valued, sheet, (boxes, { width, height }) => {
        const any = bestValue(boxes, width, height, { maxNodes: 100_000, nodesPerChoice: 20_000 });
        const straight = bestGuillotine(boxes, width, height, 20_000);
        const endless = guillotineTable(boxes, width, height, false).worth(width, height);
        const bound = valueBound(boxes, width, height)(
          0,
          boxes.map(() => 0),
          0,
        );
        expect(any.proved && straight.proved).toBe(true);
        expect(packingFaults(boxes, any.spots, width, height, false)).toEqual([]);
        expect(packingFaults(boxes, straight.spots, width, height, false)).toEqual([]);
        expect(cutsThrough(straight.spots)).toBe(true);
        expect(straight.value).toBeLessThanOrEqual(any.value);
        expect(straight.value).toBeLessThanOrEqual(endless);
        expect(any.value).toBeLessThanOrEqual(bound);
      }),
      { numRuns: 200 },
    );
  });

  test('lies like a pinwheel where no straight cut yields as much', () => {
    // four of 3 × 2 around one of 1 × 1 fill 5 × 5, and nothing else of these does
    const boxes = [
      { width: 3, height: 2, count: 4, turns: true, value: 7 },
      { width: 1, height: 1, count: 1, turns: false, value: 0.5 },
    ];
    expect(bestGuillotine(boxes, 5, 5, 20_000).value).toBeLessThan(28);
    const spots = pinwheel(guillotineTable(boxes, 5, 5, true), 5, 5);
    expect(packingFaults(boxes, spots, 5, 5, true)).toEqual([]);
    expect(cutsThrough(spots)).toBe(false);
  });

  test('of pinwheels overlaps nothing, and is no more than of endless boxes cut in any way', () => {
    fc.assert(
      fc.property(valued, sheet, (boxes, { width, height }) => {
        const endless = boxes.map((each) => ({ ...each, count: width * height }));
        const spots = pinwheel(guillotineTable(endless, width, height, true), width, height);
        expect(packingFaults(endless, spots, width, height, false)).toEqual([]);
        const value = spots.reduce((sum, spot) => sum + (boxes[spot.box]?.value ?? 0), 0);
        const most = bestValue(endless, width, height, { maxNodes: 100_000, nodesPerChoice: 20_000 });
        expect(value).toBeLessThanOrEqual(most.bound);
      }),
      { numRuns: 60 },
    );
  });

  test('a bound holds beside boxes without value or weight', () => {
    // widths and heights of a kit in sixteenths; the first has no value, and no weight on some scales
    const boxes = [
      { width: 47, height: 28, count: 11, turns: true, value: 0 },
      { width: 20, height: 58, count: 11, turns: true, value: 0 },
      { width: 111, height: 49, count: 11, turns: true, value: 1 / 3 },
      { width: 84, height: 67, count: 33, turns: false, value: 1 / 2 },
    ];
    const best = bestValue(boxes, 124, 179, { maxNodes: 10_000, nodesPerChoice: 1000 });
    expect(best.value).toBeCloseTo(1 / 3 + 1 / 3 + 1 / 2);
    expect(valueBound(boxes, 124, 179)(0, [0, 0, 0, 0], 0)).toBeGreaterThanOrEqual(best.value);
  });
});

describe('a strip', () => {
  test('holds every copy, no lower than its bound', () => {
    fc.assert(
      fc.property(
        fc.array(box(8, 3), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 8, max: 14 }),
        (boxes, width) => {
          const strip = packStrip(boxes, width, { seed: 1, evaluations: 30, maxNodes: 5000 });
          expect(packingFaults(boxes, strip.spots, width, strip.height, true)).toEqual([]);
          expect(strip.bound).toBeLessThanOrEqual(strip.height);
          if (strip.proved && strip.height > 1)
            expect(fitTogether(boxes, width, strip.height - 1, 20_000).spots).toBeUndefined();
        },
      ),
      { numRuns: 120 },
    );
  });

  test('refuses a box that is wider', () => {
    const wide = { width: 9, height: 10, count: 1, turns: true };
    expect(() => packStrip([wide], 8, { seed: 1, evaluations: 1, maxNodes: 0 })).toThrow(RangeError);
  });
});
