import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf, stretchLength } from '../../shared/geometry/arc-length.ts';
import { areaOf, isOuter, signedArea } from '../../shared/geometry/area.ts';
import { type Bounds, boundsOf, centreOf, contourBounds, overlap } from '../../shared/geometry/bounds.ts';
import type { Contour } from '../../shared/geometry/contour.ts';
import { isInside, windingAround } from '../../shared/geometry/inside.ts';
import { moveContour } from '../../shared/geometry/move-shape.ts';
import { rectangleAt } from '../../shared/geometry/polygons.ts';
import { polygon, reverse, walk } from '../../shared/geometry/walk.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { bezierOf, blobs, distanceTo, motions, sampled } from '../support/contours.ts';

const holds =
  ({ left, top, right, bottom }: Bounds, slack: number) =>
  (p: { x: number; y: number }) =>
    p.x >= left - slack && p.x <= right + slack && p.y >= top - slack && p.y <= bottom + slack;

const square = polygon(rectangleAt(mm(10), mm(10)));

describe('bounds', () => {
  test('hold every sample of a contour, and each of their sides is reached', () => {
    fc.assert(
      fc.property(blobs, motions, (blob, by) => {
        const contour = moveContour(blob, by);
        const bounds = contourBounds(contour);
        const points = sampled(contour, 400);
        expect(points.every(holds(bounds, 1e-3))).toBe(true);
        const reached = {
          left: Math.min(...points.map(({ x }) => x)),
          top: Math.min(...points.map(({ y }) => y)),
          right: Math.max(...points.map(({ x }) => x)),
          bottom: Math.max(...points.map(({ y }) => y)),
        };
        for (const side of ['left', 'top', 'right', 'bottom'] as const)
          expect(Math.abs(bounds[side] - reached[side])).toBeLessThan(mm(0.001));
      }),
    );
  });

  test('agree with bezier-js on each curve', () => {
    let compared = 0;
    fc.assert(
      fc.property(blobs, (blob) => {
        walk(blob, (from, stretch) => {
          const curve = bezierOf(from, stretch);
          if (!curve) return;
          const { x, y } = curve.bbox();
          const theirs = { left: x.min, top: y.min, right: x.max, bottom: y.max };
          // its root finder loses its digits on almost symmetric curves: then not even its own points lie within
          if (!curve.getLUT(64).every(holds(theirs, 1))) return;
          const ours = contourBounds({ start: from, stretches: [stretch] });
          for (const side of ['left', 'top', 'right', 'bottom'] as const)
            expect(Math.abs(ours[side] - theirs[side])).toBeLessThan(1);
          compared += 1;
        });
      }),
    );
    expect(compared).toBeGreaterThan(150);
  });

  test('the check fails on bounds of the corners alone', () => {
    const bulge: Contour = {
      start: { x: 0, y: 0 },
      stretches: [
        {
          control: [
            { x: 0, y: -4 },
            { x: 8, y: -4 },
          ],
          to: { x: 8, y: 0 },
        },
        { to: { x: 0, y: 0 } },
      ],
    };
    expect(boundsOf([bulge])).toEqual({ left: 0, top: -3, right: 8, bottom: 0 });
    expect(sampled(bulge).every(holds({ left: 0, top: 0, right: 8, bottom: 0 }, 1e-3))).toBe(false);
  });

  test('of nothing are refused', () => {
    expect(() => boundsOf([])).toThrow('no bounds');
  });

  test('that touch overlap; those apart do not', () => {
    const one = contourBounds(square);
    expect(centreOf(one)).toEqual({ x: 0, y: 0 });
    expect(overlap(one, { left: mm(5), top: 0, right: mm(6), bottom: 1 })).toBe(true);
    expect(overlap(one, { left: mm(5) + 1, top: 0, right: mm(6), bottom: 1 })).toBe(false);
  });
});

describe('areas', () => {
  test('agree with the shoelace formula on many samples', () => {
    fc.assert(
      fc.property(blobs, (blob) => {
        const points = sampled(blob, 1000);
        const shoelace =
          points.reduce((sum, p, index) => {
            const q = points[(index + 1) % points.length] ?? p;
            return sum + p.x * q.y - q.x * p.y;
          }, 0) / 2;
        expect(signedArea(blob) / shoelace).toBeCloseTo(1, 5);
      }),
    );
  });

  test('are positive for what runs clockwise as seen, and turn with the way round', () => {
    expect(signedArea(square)).toBe(mm(10) * mm(10));
    expect(signedArea(reverse(square))).toBe(-mm(10) * mm(10));
    expect([isOuter(square), isOuter(reverse(square))]).toEqual([true, false]);
    expect(areaOf([square, reverse(polygon(rectangleAt(mm(4), mm(5))))])).toBe(
      mm(10) * mm(10) - mm(4) * mm(5),
    );
  });

  test('do not lose digits far from the origin', () => {
    const far = moveContour(square, { a: 1, b: 0, c: 0, d: 1, tx: mm(9000), ty: mm(-9000) });
    expect(signedArea(far)).toBe(signedArea(square));
  });
});

describe('lengths', () => {
  test('of curves agree with bezier-js', () => {
    fc.assert(
      fc.property(blobs, (blob) => {
        walk(blob, (from, stretch) => {
          const theirs = bezierOf(from, stretch)?.length();
          if (theirs !== undefined) expect(Math.abs(stretchLength(from, stretch) - theirs)).toBeLessThan(100);
        });
      }),
    );
  });

  test('of polygons are the sum of their sides', () => {
    expect(lengthOf(square)).toBe(mm(40));
  });
});

describe('inside', () => {
  test('is what an even number of crossings with the samples is not', () => {
    const place = fc.record({
      x: fc.integer({ min: -mm(25), max: mm(25) }),
      y: fc.integer({ min: -mm(25), max: mm(25) }),
    });
    fc.assert(
      fc.property(blobs, place, (blob, p) => {
        const points = sampled(blob, 300);
        fc.pre(distanceTo([points], p) > mm(0.01));
        let isOdd = false;
        for (const [index, a] of points.entries()) {
          const b = points[(index + 1) % points.length] ?? a;
          if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x))
            isOdd = !isOdd;
        }
        expect(isInside([blob], p)).toBe(isOdd);
        expect(windingAround(blob, p)).toBe(isOdd ? 1 : 0);
        expect(windingAround(reverse(blob), p) + 0).toBe(isOdd ? -1 : 0);
      }),
    );
  });

  test('leaves out counters', () => {
    const ring = [square, reverse(polygon(rectangleAt(mm(4), mm(4))))];
    expect(isInside(ring, { x: mm(3), y: 0 })).toBe(true);
    expect(isInside(ring, { x: mm(1), y: 0 })).toBe(false);
  });
});
