import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../shared/geometry/arc-length.ts';
import { areaOf, isOuter } from '../../shared/geometry/area.ts';
import type { Shape } from '../../shared/geometry/contour.ts';
import { moveContour, moveShape, scaleShape, shift, turn } from '../../shared/geometry/move-shape.ts';
import { inverse, move } from '../../shared/geometry/plane.ts';
import { polygon, reverse } from '../../shared/geometry/walk.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { blobs, distanceTo, motions, sampled } from '../support/contours.ts';

/** A blob with a smaller copy of itself as its counter. */
const framed = blobs.map((blob): Shape => [blob, ...scaleShape([reverse(blob)], 0.5)]);

describe('a moved figure', () => {
  test('keeps its area, its length and which contours are counters', () => {
    fc.assert(
      fc.property(framed, motions, (shape, by) => {
        const moved = moveShape(shape, by);
        expect(areaOf(moved) / areaOf(shape)).toBeCloseTo(1, 9);
        expect(moved.map(isOuter)).toEqual([true, false]);
        for (const [index, contour] of moved.entries()) {
          const before = shape[index];
          if (before) expect(Math.abs(lengthOf(contour) - lengthOf(before))).toBeLessThan(2000);
        }
      }),
    );
  });

  test('lies where each of its points is taken', () => {
    fc.assert(
      fc.property(blobs, motions, (blob, by) => {
        const points = [sampled(moveContour(blob, by), 200)];
        for (const p of sampled(blob, 20)) expect(distanceTo(points, move(by, p))).toBeLessThan(mm(0.002));
      }),
      { numRuns: 30 },
    );
  });

  test('comes back by the motion that undoes it', () => {
    fc.assert(
      fc.property(blobs, motions, (blob, by) => {
        const back = moveContour(moveContour(blob, by), inverse(by));
        expect(Math.hypot(back.start.x - blob.start.x, back.start.y - blob.start.y)).toBeLessThan(1e-3);
        expect(back.stretches).toHaveLength(blob.stretches.length);
      }),
    );
  });

  test('the check of counters fails where a mirrored figure is not walked backward', () => {
    const corner = polygon([
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 0, y: 3 },
    ]);
    const mirrored = polygon([
      { x: 0, y: 0 },
      { x: -4, y: 0 },
      { x: 0, y: 3 },
    ]);
    expect(isOuter(corner)).toBe(true);
    expect(isOuter(mirrored)).toBe(false);
    expect(isOuter(moveContour(corner, { a: -1, b: 0, c: 0, d: 1, tx: 0, ty: 0 }))).toBe(true);
  });
});

describe('a scaled figure', () => {
  test('has its area times both factors, and stays clockwise', () => {
    const factor = fc.double({ min: 0.1, max: 4, noNaN: true });
    fc.assert(
      fc.property(blobs, factor, factor, fc.boolean(), (blob, across, along, isMirrored) => {
        const scaled = scaleShape([blob], isMirrored ? -across : across, along);
        expect(areaOf(scaled) / (areaOf([blob]) * across * along)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('is never scaled to nothing', () => {
    expect(() => scaleShape([], 0)).toThrow('no area');
  });
});

describe('turns', () => {
  test.each([
    [0, { x: 3, y: 0 }],
    [90, { x: 0, y: 3 }],
    [-90, { x: 0, y: -3 }],
    [180, { x: -3, y: 0 }],
    [450, { x: 0, y: 3 }],
  ])('by %i degrees are exact, clockwise as seen (y runs down)', (degrees, to) => {
    const { x, y } = move(turn(degrees), { x: 3, y: 0 });
    expect({ x: x + 0, y: y + 0 }).toEqual(to);
  });

  test('by 30 degrees take x to (cos 30°, sin 30°)', () => {
    const { x, y } = move(turn(30), { x: 2, y: 0 });
    expect(x).toBeCloseTo(Math.sqrt(3), 12);
    expect(y).toBeCloseTo(1, 12);
  });

  test('a shift only shifts', () => {
    expect(move(shift(5, -7), { x: 1, y: 1 })).toEqual({ x: 6, y: -6 });
  });
});
