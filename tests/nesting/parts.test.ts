import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aliveList } from '../../shared/nesting/alive-list.ts';
import { fillByLedge, shelfOf } from '../../shared/nesting/fill-by-ledge.ts';
import { fillByOrder, queueOf, rules, sizeKeys } from '../../shared/nesting/fill-by-order.ts';
import { overlap, type Rectangle, without } from '../../shared/nesting/free-space.ts';
import { gcdOf } from '../../shared/nesting/gcd.ts';
import { heapBy } from '../../shared/nesting/heap.ts';
import { mostByArea } from '../../shared/nesting/most-by-area.ts';
import { offcutsOf } from '../../shared/nesting/offcuts.ts';
import { randomFrom } from '../../shared/nesting/random.ts';
import { reachable } from '../../shared/nesting/reachable.ts';
import { sharedEdges } from '../../shared/nesting/shared-edges.ts';
import { packingFaults } from '../support/packing-faults.ts';

const rectangle = fc.record({
  x: fc.integer({ min: 0, max: 9 }),
  y: fc.integer({ min: 0, max: 9 }),
  width: fc.integer({ min: 1, max: 6 }),
  height: fc.integer({ min: 1, max: 6 }),
});
const cells = ({ x, y, width, height }: Rectangle): string[] =>
  Array.from(
    { length: width * height },
    (_, cell) => `${x + (cell % width)},${y + Math.floor(cell / width)}`,
  );

describe('free space', () => {
  test('is exactly what no rectangle covers, in rectangles of which none lies in another', () => {
    fc.assert(
      fc.property(fc.array(rectangle, { maxLength: 8 }), (taken) => {
        const free = taken.reduce(without, [{ x: 0, y: 0, width: 16, height: 16 }] as readonly Rectangle[]);
        const covered = new Set(taken.flatMap(cells));
        const all = cells({ x: 0, y: 0, width: 16, height: 16 });
        expect(new Set(free.flatMap(cells))).toEqual(new Set(all.filter((cell) => !covered.has(cell))));
        for (const one of free)
          for (const other of free)
            if (one !== other) expect(cells(one).every((cell) => cells(other).includes(cell))).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  test('offcuts overlap neither what is taken nor one another, the largest first', () => {
    fc.assert(
      fc.property(fc.array(rectangle, { maxLength: 8 }), (taken) => {
        const offcuts = offcutsOf(16, 16, taken, 2);
        offcuts.forEach((offcut, index) => {
          expect(Math.min(offcut.width, offcut.height)).toBeGreaterThanOrEqual(2);
          for (const other of [...taken, ...offcuts.slice(0, index)])
            expect(overlap(offcut, other)).toBe(false);
        });
        const areas = offcuts.map(({ width, height }) => width * height);
        expect(areas).toEqual(areas.toSorted((one, other) => other - one));
      }),
      { numRuns: 100 },
    );
  });
});

describe('shared edges', () => {
  test('of four squares in a square are its two middle lines', () => {
    const square = (x: number, y: number) => ({ x, y, width: 2, height: 2 });
    expect(sharedEdges([square(0, 0), square(2, 0), square(0, 2), square(2, 2)])).toEqual([
      { x1: 2, y1: 0, x2: 2, y2: 4 },
      { x1: 0, y1: 2, x2: 4, y2: 2 },
    ]);
  });

  test('are only as long as both sides, and none at a distance or at a corner', () => {
    const one = { x: 0, y: 0, width: 2, height: 4 };
    expect(sharedEdges([one, { x: 2, y: 1, width: 3, height: 9 }])).toEqual([{ x1: 2, y1: 1, x2: 2, y2: 4 }]);
    expect(sharedEdges([one, { x: 3, y: 0, width: 2, height: 4 }])).toEqual([]);
    expect(sharedEdges([one, { x: 2, y: 4, width: 2, height: 4 }])).toEqual([]);
  });
});

describe('shared edges of outlines', () => {
  /** 60 wide and 40 high; upright its head of 40 is above its base of 60. */
  const pennant = (x: number, y: number, upright: boolean) => {
    const [head, base] = upright ? [0, 40] : [40, 0];
    const outline = [
      { x: 10, y: head },
      { x: 50, y: head },
      { x: 60, y: base },
      { x: 0, y: base },
    ];
    return { x, y, width: 60, height: 40, outline };
  };
  const small = { x: 0, y: 40, width: 20, height: 20 };

  test('are where their straight sides meet, as far as both go', () => {
    expect(sharedEdges([pennant(0, 0, true), pennant(0, 40, true)])).toEqual([
      { x1: 10, y1: 40, x2: 50, y2: 40 },
    ]);
    expect(sharedEdges([pennant(0, 0, true), small])).toEqual([{ x1: 0, y1: 40, x2: 20, y2: 40 }]);
    expect(sharedEdges([pennant(0, 0, false), small])).toEqual([{ x1: 10, y1: 40, x2: 20, y2: 40 }]);
  });

  test('are none where only boxes meet', () => {
    expect(sharedEdges([pennant(0, 0, true), { x: 60, y: 0, width: 30, height: 40 }])).toEqual([]);
    expect(sharedEdges([pennant(0, 0, true), pennant(60, 0, false)])).toEqual([]);
  });
});

describe('chance', () => {
  test('is the same for the same seed, another for another, and evenly spread', () => {
    const drawn = (seed: number) => Array.from({ length: 8000 }, randomFrom(seed).next);
    expect(drawn(7)).toEqual(drawn(7));
    expect(drawn(7)).not.toEqual(drawn(8));
    for (const seed of [0, 1, 2 ** 32 - 1]) {
      const tenths = Map.groupBy(drawn(seed), (number) => Math.floor(10 * number));
      // 800 expected in each, with a standard deviation of 27
      for (let tenth = 0; tenth < 10; tenth++)
        expect(Math.abs((tenths.get(tenth)?.length ?? 0) - 800)).toBeLessThan(6 * 27);
    }
  });
});

describe('filling one sheet', () => {
  const boxes = fc.array(
    fc.record({
      width: fc.integer({ min: 1, max: 9 }),
      height: fc.integer({ min: 1, max: 9 }),
      count: fc.integer({ min: 1, max: 5 }),
      turns: fc.boolean(),
    }),
    { minLength: 1, maxLength: 8 },
  );

  test('keeps to the sheet and the counts, and takes what it places', () => {
    fc.assert(
      fc.property(
        boxes,
        fc.constantFrom(...Object.values(rules)),
        fc.constantFrom(...Object.values(sizeKeys)),
        (list, rule, key) => {
          for (const fill of [
            (counts: number[]) => fillByOrder(queueOf(list, counts, key), 12, 10, rule),
            (counts: number[]) =>
              fillByLedge(
                shelfOf(list),
                counts,
                12,
                10,
                list.map((_, index) => index),
              ),
          ]) {
            const counts = list.map(({ count }) => count);
            const spots = fill(counts);
            expect(packingFaults(list, spots, 12, 10, false)).toEqual([]);
            expect(counts).toEqual(
              list.map(({ count }, box) => count - spots.filter((spot) => spot.box === box).length),
            );
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  test('finds the one box that still fits behind very many that do not', () => {
    const random = randomFrom(3);
    const list = Array.from({ length: 400 }, () => ({
      width: 31 + random.below(20),
      height: 31 + random.below(20),
      count: 1,
      turns: true,
    }));
    const counts = list.map(() => 1);
    const small = { width: 2, height: 2, count: 1, turns: false };
    const spots = fillByOrder(
      queueOf([...list, small], [...counts, 1], sizeKeys.area),
      60,
      60,
      rules.shortSide,
    );
    expect(spots.some(({ box }) => box === 400)).toBe(true);
  });
});

describe('small tools', () => {
  test('a list of what is left finds the next', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 30 }), fc.nat(30), (left, at) => {
        const next = left.findIndex((alive, index) => alive && index >= at);
        expect(aliveList(left.length, (index) => left[index] === true).from(Math.min(at, left.length))).toBe(
          next < 0 ? left.length : next,
        );
      }),
    );
  });

  test('a heap gives the highest rank first', () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), (numbers) => {
        const heap = heapBy<number>((number) => number);
        for (const number of numbers) heap.push(number);
        expect(numbers.map(heap.pop)).toEqual(numbers.toSorted((one, other) => other - one));
        expect(heap.pop()).toBeUndefined();
      }),
    );
  });

  test('reachable lengths are the sums of sides, each as often as it is there', () => {
    const boxes = [
      { width: 3, height: 50, count: 2, turns: false },
      { width: 5, height: 50, count: 1, turns: false },
    ];
    const room = { width: 12, height: 60 };
    expect(reachable(boxes, 'width', room, true).lengths).toEqual([0, 3, 5, 6, 8, 11]);
    expect(reachable(boxes, 'width', room, false).lengths).toEqual([0, 3, 5, 6, 8, 9, 10, 11, 12]);
    expect(reachable(boxes, 'width', room, false, 4).complete).toBe(false);
  });

  test('a knapsack by area is exact for whole areas, and no less in shares', () => {
    const boxes = [
      { width: 2, height: 3, count: 2, turns: false, value: 7 },
      { width: 2, height: 2, count: 3, turns: false, value: 4 },
    ];
    const exact = mostByArea(boxes, 20);
    expect([3, 4, 6, 10, 12, 20].map(exact)).toEqual([0, 4, 7, 11, 14, 22]);
    const shares = mostByArea(boxes, 20.5);
    expect([3, 4, 6, 10, 12, 20].every((area) => shares(area) >= exact(area))).toBe(true);
  });

  test('the greatest common divisor', () => {
    expect([gcdOf([12, 18, 30]), gcdOf([7]), gcdOf([4, 9]), gcdOf([])]).toEqual([6, 7, 1, 1]);
  });
});
