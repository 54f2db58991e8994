import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ellipse } from '../../../shared/geometry/arcs.ts';
import { areaOf } from '../../../shared/geometry/area.ts';
import { subtract, unite } from '../../../shared/geometry/clip/combine.ts';
import type { Shape } from '../../../shared/geometry/contour.ts';
import { moveShape, shift, turn } from '../../../shared/geometry/move-shape.ts';
import { polygon, reverse } from '../../../shared/geometry/walk.ts';
import { bridge, bridgeWithBars } from '../../../shared/knockouts/bridges/bridge.ts';
import { bridgeWidth } from '../../../shared/knockouts/bridges/bridge-width.ts';
import { holdIslands } from '../../../shared/knockouts/bridges/hold-islands.ts';
import { islandsOf } from '../../../shared/knockouts/bridges/islands.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import { paperPieces } from '../../support/paper-pieces.ts';

const disc = (x: number, y: number, radius: number) =>
  ellipse({ x: mm(x), y: mm(y) }, mm(radius), mm(radius));
const ring = (outer: number, inner: number): Shape => [disc(0, 0, outer), reverse(disc(0, 0, inner))];
const box = (left: number, top: number, width: number, height: number): Shape => [
  polygon(
    [
      [left, top],
      [left + width, top],
      [left + width, top + height],
      [left, top + height],
    ].map(([x = 0, y = 0]) => ({ x: mm(x), y: mm(y) })),
  ),
];

const SQUARE_MM = 1e12; // nm²

describe('the width of a bridge', () => {
  test.each([
    // height mm, caliper mm, width mm: the most of 2 mm, 5 % of the height, 3 × caliper
    [25.4, 0.3, 2], // 0.05 in on a letter of 1 in is 1.27 mm, below the least
    [40, 0.3, 2],
    [100, 0.3, 5],
    [40, 0.8, 2.4],
  ])('letters of %d mm on paper of %d mm: %d mm', (height, caliper, width) => {
    expect(bridgeWidth(mm(height), mm(caliper))).toBe(mm(width));
  });
});

describe('islands', () => {
  test('are the counters of a figure, with their places and areas', () => {
    const [island, ...more] = islandsOf(ring(20, 8));
    expect(more).toEqual([]);
    expect(island?.contour).toBe(1);
    expect(island?.bounds).toEqual({ left: -mm(8), top: -mm(8), right: mm(8), bottom: mm(8) });
    expect((island?.area ?? 0) / SQUARE_MM).toBeCloseTo(Math.PI * 64, 0);
  });

  test('do not count openings inside them, and lie in each other', () => {
    const target = [...ring(30, 20), ...ring(15, 5)];
    const areas = islandsOf(target).map(({ area }) => Math.round(area / SQUARE_MM / Math.PI));
    expect(areas).toEqual([20 ** 2 - 15 ** 2, 5 ** 2]);
  });

  test('a figure without counters has none, and comes back as it is', () => {
    const two: Shape = [disc(0, 0, 5), disc(20, 0, 5)];
    expect(islandsOf(two)).toEqual([]);
    expect(bridge(two, mm(2))).toBe(two);
  });
});

describe('bridges', () => {
  test('hold the middle of a ring above and below', () => {
    const { shape, bars } = bridgeWithBars(ring(20, 12), mm(2));
    expect(bars.map(({ along }) => [along.x + 0, along.y])).toEqual([
      [0, -1],
      [0, 1],
    ]);
    expect(shape.length).toBe(2);
    // two bars of 2 mm × 8 mm; round ends take a little more
    const taken = (areaOf(ring(20, 12)) - areaOf(shape)) / SQUARE_MM;
    expect(taken).toBeGreaterThan(31.9);
    expect(taken).toBeLessThan(33);
    expect(paperPieces(ring(20, 12))).toBe(2);
    expect(paperPieces(shape)).toBe(1);
  });

  test('are as wide as asked for, all along', () => {
    const shape = bridge(ring(20, 12), mm(3));
    // the paper between the halves, cut out of a strip across the upper bar
    const strip = box(-5, -17, 10, 2);
    const paper = subtract(strip, shape);
    expect(areaOf(paper) / SQUARE_MM).toBeCloseTo(3 * 2, 5);
  });

  test('a big island gets four, a huge one more', () => {
    expect(bridgeWithBars(ring(30, 25), mm(2)).bars.length).toBe(4);
    expect(bridgeWithBars(ring(100, 95), mm(3)).bars.length).toBeGreaterThan(4);
    expect(paperPieces(bridge(ring(100, 95), mm(3)), 60)).toBe(1);
  });

  test('a long slot’s island is held along its length', () => {
    const slot = subtract(box(0, 0, 200, 12), box(4, 4, 192, 4));
    const { shape, bars } = bridgeWithBars(slot, mm(2));
    expect(bars.length).toBeGreaterThanOrEqual(4);
    expect(paperPieces(shape, 100)).toBe(1);
  });

  test('islands in islands are all held', () => {
    const target = [...ring(30, 24), ...ring(18, 12), ...ring(8, 4)];
    const shape = bridge(target, mm(2));
    expect(islandsOf(shape)).toEqual([]);
    expect(paperPieces(target)).toBe(4);
    expect(paperPieces(shape)).toBe(1);
  });

  test('two islands side by side share a bridge', () => {
    const spectacles = subtract(unite([[disc(-9, 0, 10)], [disc(9, 0, 10)]]), [
      disc(-9, 0, 6),
      disc(9, 0, 6),
    ]);
    const shape = bridge(spectacles, mm(2));
    expect(paperPieces(spectacles)).toBe(3);
    expect(paperPieces(shape)).toBe(1);
  });

  test('a turned figure is bridged as the upright one when told where up is', () => {
    const letter = subtract(box(0, 0, 20, 30), box(5, 5, 10, 9));
    const up = { x: Math.sin(Math.PI / 6), y: -Math.cos(Math.PI / 6) };
    const turned = bridgeWithBars(moveShape(letter, turn(30)), mm(2), () => up);
    const upright = bridgeWithBars(letter, mm(2));
    expect(turned.bars.length).toBe(upright.bars.length);
    expect(areaOf(turned.shape) / areaOf(upright.shape)).toBeCloseTo(1, 4);
  });

  test('whatever discs are cut out of whatever discs, nothing falls', () => {
    const circle = fc.record({
      x: fc.integer({ min: -25, max: 25 }),
      y: fc.integer({ min: -25, max: 25 }),
      radius: fc.integer({ min: 3, max: 20 }),
    });
    const discs = fc.array(circle, { minLength: 1, maxLength: 6 });
    let held = 0;
    fc.assert(
      fc.property(discs, discs, (plus, minus) => {
        const figures = (list: typeof plus) => unite(list.map(({ x, y, radius }) => [disc(x, y, radius)]));
        const shape = subtract(
          figures(plus),
          figures(minus.map((one) => ({ ...one, radius: one.radius / 2 }))),
        );
        const bridged = bridge(shape, mm(2));
        held += islandsOf(shape).length;
        expect(islandsOf(bridged)).toEqual([]);
        // webs below the width of a pixel, as touching discs leave, are not seen by the pixels
        if (bridged.length > 0 && islandsOf(shape).length > 0)
          expect(paperPieces(bridged, 150, 40)).toBeLessThanOrEqual(
            paperPieces(withoutCounters(shape), 150, 40),
          );
      }),
      { numRuns: 60 },
    );
    expect(held).toBeGreaterThan(10);
  });
});

/** A figure with its counters cut out as well. */
const withoutCounters = (shape: Shape): Shape =>
  unite(shape.map((contour) => [areaOf([contour]) > 0 ? contour : reverse(contour)]));

describe('holding', () => {
  test('lists what falls where no bridges are wanted', () => {
    const held = holdIslands(ring(20, 12), { bridges: 'none', width: mm(2) });
    expect(held).toMatchObject({ shape: ring(20, 12), bridges: 0, islands: [{ contour: 1 }] });
  });

  test('refuses bridges that leave next to nothing', () => {
    const tiny = holdIslands(ring(2, 1), { bridges: 'automatic', width: mm(3) });
    expect(tiny).toMatchObject({ message: expect.stringContaining('less than a third') });
    expect(tiny).not.toHaveProperty('shape');
  });

  test('refuses more islands than can be looked after', () => {
    const sieve = subtract(
      box(0, 0, 160, 160),
      Array.from({ length: 225 }, (_, i) =>
        moveShape(box(0, 0, 5, 5), shift(mm(5 + (i % 15) * 10), mm(5 + Math.floor(i / 15) * 10))),
      ).flat(),
    );
    expect(holdIslands(sieve, { bridges: undefined, width: mm(2) })).toMatchObject({
      message: expect.stringContaining('225 pieces'),
    });
    expect(holdIslands(sieve, { bridges: 'none', width: mm(2) })).toMatchObject({ bridges: 0 });
  });
});
