import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../../shared/geometry/arc-length.ts';
import { ellipse } from '../../../shared/geometry/arcs.ts';
import { areaOf, isOuter, signedArea } from '../../../shared/geometry/area.ts';
import { boundsOf } from '../../../shared/geometry/bounds.ts';
import { fitCubics } from '../../../shared/geometry/clip/fit-cubics.ts';
import { offset } from '../../../shared/geometry/clip/offset.ts';
import { isCurve, type Shape } from '../../../shared/geometry/contour.ts';
import { isInside } from '../../../shared/geometry/inside.ts';
import { rectangleAt } from '../../../shared/geometry/polygons.ts';
import { roundCorners } from '../../../shared/geometry/round-corners.ts';
import { polygon, reverse } from '../../../shared/geometry/walk.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import {
  blobs,
  convexPolygons,
  distanceTo,
  millimetres,
  sampled,
  stretchCount,
} from '../../support/contours.ts';

const STATED = mm(0.02);
const distances = millimetres(0.05, 6);

const kinds = (shape: Shape): string =>
  shape.flatMap(({ stretches }) => stretches.map((stretch) => (isCurve(stretch) ? 'C' : 'L'))).join('');

describe('an offset figure', () => {
  test('has its edge at the distance from the edge of the figure, within what is stated', () => {
    fc.assert(
      fc.property(blobs, distances, fc.boolean(), (blob, distance, isOutward) => {
        const edges = [sampled(blob, 300)];
        const moved = offset([blob], isOutward ? distance : -distance);
        for (const p of moved.flatMap((contour) => sampled(contour, 8))) {
          expect(Math.abs(distanceTo(edges, p) - distance)).toBeLessThan(STATED);
          expect(isInside([blob], p)).toBe(!isOutward);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('of a convex polygon has the area of Steiner’s formula, A + P·d + π·d²', () => {
    fc.assert(
      fc.property(convexPolygons, distances, (points, distance) => {
        const convex = polygon(points);
        const steiner = signedArea(convex) + lengthOf(convex) * distance + Math.PI * distance ** 2;
        const grown = offset([convex], distance);
        expect(grown).toHaveLength(1);
        expect(Math.abs(areaOf(grown) - steiner)).toBeLessThan((STATED * lengthOf(convex)) / 2);
      }),
    );
  });

  test('that is convex comes back when it is offset out and in', () => {
    fc.assert(
      fc.property(
        convexPolygons,
        distances,
        fc.constantFrom('round' as const, 'mitred' as const),
        (points, distance, join) => {
          const convex = polygon(points);
          const back = offset(offset([convex], distance, join), -distance, 'mitred');
          const edges = [points];
          for (const p of back.flatMap((contour) => sampled(contour, 4)))
            expect(distanceTo(edges, p)).toBeLessThan(2 * STATED);
          expect(Math.abs(areaOf(back) - signedArea(convex))).toBeLessThan(2 * STATED * lengthOf(convex));
        },
      ),
    );
  });

  test('has few stretches: curves, not points', () => {
    fc.assert(
      fc.property(blobs, distances, (blob, distance) => {
        expect(stretchCount(offset([blob], distance))).toBeLessThan(8 * blob.stretches.length + 12);
      }),
    );
  });

  test('the check of distances fails on an edge that is 50 µm off', () => {
    const [outer] = offset([ellipse({ x: 0, y: 0 }, mm(10), mm(10))], mm(2.05));
    const edges = [sampled(ellipse({ x: 0, y: 0 }, mm(10), mm(10)), 300)];
    const off = outer ? sampled(outer, 8).map((p) => Math.abs(distanceTo(edges, p) - mm(2))) : [];
    expect(Math.min(...off)).toBeGreaterThan(STATED);
  });
});

describe('by hand', () => {
  test('a circle is a circle again, of four curves', () => {
    for (const distance of [mm(-9), mm(-2), mm(0.5), mm(5)]) {
      const grown = offset([ellipse({ x: 0, y: 0 }, mm(10), mm(10))], distance);
      expect(kinds(grown)).toBe('CCCC');
      for (const { x, y } of grown.flatMap((contour) => sampled(contour, 40)))
        expect(Math.abs(Math.hypot(x, y) - mm(10) - distance)).toBeLessThan(STATED);
    }
  });

  test('a rectangle stays one with mitred joins, to the unit, and gets round corners with round ones', () => {
    const rectangle = [polygon(rectangleAt(mm(30), mm(20)))];
    const grown = offset(rectangle, mm(2), 'mitred');
    expect(kinds(grown)).toBe('LLLL');
    expect(boundsOf(grown)).toEqual({ left: -mm(17), top: -mm(12), right: mm(17), bottom: mm(12) });
    expect(kinds(offset(rectangle, mm(2)))).toBe('LCLCLCLC');
    expect(kinds(offset([roundCorners(rectangleAt(mm(30), mm(20)), mm(3))], mm(2)))).toBe('LCLCLCLC');
    expect(kinds(offset(rectangle, mm(-2)))).toBe('LLLL');
  });

  test('a counter shrinks where the figure grows, and vanishes when it is filled', () => {
    const frame: Shape = [
      polygon(rectangleAt(mm(30), mm(20))),
      reverse(ellipse({ x: 0, y: 0 }, mm(4), mm(4))),
    ];
    const grown = offset(frame, mm(1));
    expect(grown.map(isOuter)).toEqual([true, false]);
    expect(Math.abs(areaOf(grown.slice(1))) / (Math.PI * mm(3) ** 2)).toBeCloseTo(1, 2);
    expect(offset(frame, mm(4.1))).toHaveLength(1);
  });

  test('what is narrower than twice the distance vanishes', () => {
    const bar = [polygon(rectangleAt(mm(30), mm(3)))];
    expect(offset(bar, mm(-1.4))).toHaveLength(1);
    expect(offset(bar, mm(-1.6))).toEqual([]);
  });

  test('a distance of 0 changes nothing, and nothing stays nothing', () => {
    const bar = [polygon(rectangleAt(mm(30), mm(3)))];
    expect(offset(bar, 0)).toBe(bar);
    expect(offset([], mm(1))).toEqual([]);
  });
});

describe('cubics fitted to points', () => {
  const arc = (degrees: number, count: number) =>
    Array.from({ length: count + 1 }, (_, index) => {
      const angle = (index / count) * degrees * (Math.PI / 180);
      return { x: mm(10) * Math.cos(angle), y: mm(10) * Math.sin(angle) };
    });

  test('a quarter of a circle takes one, and a half two', () => {
    expect(fitCubics(arc(90, 20), { x: 0, y: 1 }, { x: -1, y: 0 }, mm(0.01))).toHaveLength(1);
    expect(fitCubics(arc(180, 40), { x: 0, y: 1 }, { x: 0, y: -1 }, mm(0.01))).toHaveLength(2);
  });

  test('pass every point within the tolerance, and the first leaves and the last arrives as told', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 350 }), fc.constantFrom(0.005, 0.01, 0.1), (degrees, error) => {
        const points = arc(degrees, 120);
        const [start] = points;
        const angle = degrees * (Math.PI / 180);
        if (!start) throw new Error('an arc has points');
        const curves = fitCubics(
          points,
          { x: 0, y: 1 },
          { x: -Math.sin(angle), y: Math.cos(angle) },
          mm(error),
        );
        const fitted = [sampled({ start, stretches: [...curves, { to: start }] }, 200)];
        for (const p of points) expect(distanceTo(fitted, p)).toBeLessThan(mm(error) * 1.01 + 100);
        const [first] = curves;
        expect(first && isCurve(first) ? first.control[0].x : Number.NaN).toBeCloseTo(mm(10), 3);
        expect(curves.at(-1)?.to).toEqual(points.at(-1));
      }),
    );
  });

  test('two points are joined by a curve that leaves and arrives as told, or by a line where that strays', () => {
    const points = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
    ];
    const between = (tolerance: number) => fitCubics(points, { x: 0, y: 5 }, { x: 0, y: -2 }, tolerance);
    const control = [
      { x: 0, y: 10 },
      { x: 30, y: 10 },
    ];
    expect(between(8)).toEqual([{ control, to: { x: 30, y: 0 } }]);
    expect(between(7)).toEqual([{ to: { x: 30, y: 0 } }]);
  });
});
