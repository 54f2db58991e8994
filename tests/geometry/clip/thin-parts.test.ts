import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ellipse } from '../../../shared/geometry/arcs.ts';
import { areaOf } from '../../../shared/geometry/area.ts';
import { boundsOf } from '../../../shared/geometry/bounds.ts';
import { subtract, unite } from '../../../shared/geometry/clip/combine.ts';
import { opening, thinParts } from '../../../shared/geometry/clip/thin-parts.ts';
import type { Shape } from '../../../shared/geometry/contour.ts';
import { isInside } from '../../../shared/geometry/inside.ts';
import { moveShape, shift } from '../../../shared/geometry/move-shape.ts';
import { rectangleAt } from '../../../shared/geometry/polygons.ts';
import { polygon } from '../../../shared/geometry/walk.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import { blobs, distanceTo, millimetres, sampled } from '../../support/contours.ts';

const disc = (x: number, radius: number): Shape => [ellipse({ x: mm(x), y: 0 }, mm(radius), mm(radius))];
const bar = (width: number, height: number): Shape => [polygon(rectangleAt(mm(width), mm(height)))];

/** Two discs of radius 10 mm, 30 mm apart, joined by a bar. */
const dumbbell = (neck: number): Shape => unite([disc(-15, 10), disc(15, 10), bar(20, neck)]);

describe('thin parts', () => {
  test('of a dumbbell are its neck, where that is narrower than asked for', () => {
    expect(thinParts(dumbbell(1.6), mm(1.5))).toEqual([]);
    const [neck, ...others] = thinParts(dumbbell(1.4), mm(1.5));
    expect(others).toEqual([]);
    expect(neck?.kind).toBe('neck');
    const { left, right, top, bottom } = boundsOf(neck?.outline ?? []);
    expect([top, bottom]).toEqual([-mm(0.7), mm(0.7)]);
    // the discs end where their edge is as high as the neck: 15 − √(10² − 0.7²) = 5.0245 mm
    expect(Math.abs(right - mm(5.0245))).toBeLessThan(mm(0.03));
    expect(Math.abs(left + mm(5.0245))).toBeLessThan(mm(0.03));
  });

  test('of a disc with an opening off its middle are the thin side of the ring', () => {
    // 10 − (5.2 + 4) = 0.8 mm of paper on the right
    const ring = subtract(disc(0, 10), disc(5.2, 4));
    expect(thinParts(ring, mm(0.7))).toEqual([]);
    const parts = thinParts(ring, mm(1));
    expect(parts.map(({ kind }) => kind)).toEqual(['neck']);
    expect(isInside(parts[0]?.outline ?? [], { x: mm(9.6), y: 0 })).toBe(true);
  });

  test('are the whole of what is thin all over', () => {
    const parts = thinParts([...bar(30, 1), ...moveShape(bar(30, 5), shift(0, mm(10)))], mm(2));
    expect(parts.map(({ kind }) => kind)).toEqual(['whole']);
    expect(areaOf(parts[0]?.outline ?? []) / mm(1) ** 2).toBeCloseTo(30, 2);
  });

  test('are tips of corners sharper than 60°, not of right ones', () => {
    const wedge = [
      polygon([
        { x: 0, y: 0 },
        { x: mm(30), y: 0 },
        { x: 0, y: mm(10) },
      ]),
    ];
    const parts = thinParts(wedge, mm(2));
    expect(parts.map(({ kind }) => kind)).toEqual(['tip']);
    expect(isInside(parts[0]?.outline ?? [], { x: mm(29), y: mm(0.1) })).toBe(true);
    expect(thinParts(bar(20, 10), mm(2))).toEqual([]);
  });

  test('of nothing are nothing', () => {
    expect(thinParts([], mm(1))).toEqual([]);
  });

  test('are not wider than asked for anywhere, and lie in the figure', () => {
    fc.assert(
      fc.property(blobs, millimetres(0.5, 8), (blob, width) => {
        const edges = [sampled(blob, 100)];
        for (const { outline } of thinParts([blob], width)) {
          for (const p of outline.flatMap((contour) => sampled(contour, 4))) {
            const depth = distanceTo(edges, p);
            // as deep as half of the width at most: nothing that a disc of the width could reach in the middle
            expect(depth).toBeLessThan(width / 2 + mm(0.1));
            expect(isInside([blob], p) || depth < mm(0.05)).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('opening', () => {
  test('stays within the figure, and with the thin parts makes up all of it', () => {
    fc.assert(
      fc.property(blobs, millimetres(0.5, 8), (blob, width) => {
        const wide = opening([blob], width);
        const lost = thinParts([blob], width).reduce((sum, { outline }) => sum + areaOf(outline), 0);
        const whole = areaOf([blob]);
        expect(areaOf(wide)).toBeLessThan(whole + mm(0.05) * mm(120));
        // corners below 60°, and slivers that cannot be seen, are all that is missing
        expect(Math.abs(areaOf(wide) + lost - whole)).toBeLessThan(mm(0.05) * mm(120));
      }),
      { numRuns: 60 },
    );
  });

  test('cuts a dumbbell in two, and takes nothing off a rectangle', () => {
    expect(opening(dumbbell(1.4), mm(1.5))).toHaveLength(2);
    expect(areaOf(opening(bar(20, 10), mm(9)))).toBe(areaOf(bar(20, 10)));
  });

  test('the check fails where a neck is not found: one contour stays one', () => {
    expect(opening(dumbbell(1.6), mm(1.5))).toHaveLength(1);
  });
});
