import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../shared/geometry/area.ts';
import { isCurve } from '../../shared/geometry/contour.ts';
import { rectangleAt } from '../../shared/geometry/polygons.ts';
import { largestCorner, roundCorners } from '../../shared/geometry/round-corners.ts';
import { polygon } from '../../shared/geometry/walk.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { CIRCLE_AREA_EXCESS, convexPolygons } from '../support/contours.ts';

const rectangle = rectangleAt(mm(40), mm(20));
const kinds = (points: ReturnType<typeof roundCorners>) =>
  points.stretches.map((stretch) => (isCurve(stretch) ? 'arc' : 'line'));

describe('a rounded rectangle', () => {
  test('loses (4 − π)·r² of its area', () => {
    const lost = mm(40) * mm(20) - signedArea(roundCorners(rectangle, mm(3)));
    expect(lost / ((4 - Math.PI) * mm(3) ** 2)).toBeCloseTo(1, 2);
  });

  test('is lines and arcs in turn; at half of its height two lines are left', () => {
    expect(kinds(roundCorners(rectangle, mm(3))).join(' ')).toBe('line arc line arc line arc line arc');
    expect(largestCorner(rectangle)).toBe(mm(10));
    expect(kinds(roundCorners(rectangle, mm(10))).join(' ')).toBe('arc line arc arc line arc');
    expect(() => roundCorners(rectangle, mm(10.1))).toThrow('overlap');
  });

  test('keeps corners sharp where the radius is 0, each its own', () => {
    expect(kinds(roundCorners(rectangle, 0))).toEqual(['line', 'line', 'line', 'line']);
    const top = roundCorners(rectangle, (index) => (index < 2 ? mm(15) : 0));
    expect(kinds(top).join(' ')).toBe('line arc line arc line line');
  });
});

test('a rounded polygon loses r²·(tan(θ/2) − θ/2) at each corner that turns by θ', () => {
  fc.assert(
    fc.property(convexPolygons, fc.double({ min: 0.05, max: 1, noNaN: true }), (points, share) => {
      const radius = largestCorner(points) * share;
      const lost = points.reduce((sum, p, index) => {
        const before = points.at(index - 1) ?? p;
        const after = points[(index + 1) % points.length] ?? p;
        const turned = Math.atan2(
          (p.x - before.x) * (after.y - p.y) - (p.y - before.y) * (after.x - p.x),
          (p.x - before.x) * (after.x - p.x) + (p.y - before.y) * (after.y - p.y),
        );
        return sum + radius ** 2 * (Math.tan(turned / 2) - turned / 2);
      }, 0);
      const left = signedArea(roundCorners(points, radius));
      const expected = signedArea(polygon(points)) - lost;
      // arcs err outward, and a turn of a whole circle lies in the arcs
      expect(left - expected).toBeGreaterThan(-(mm(0.001) ** 2));
      expect(left - expected).toBeLessThan(CIRCLE_AREA_EXCESS * 2 * Math.PI * radius ** 2);
    }),
  );
});

test('corners that turn inward are rounded too', () => {
  const arrow = [
    { x: 0, y: 0 },
    { x: mm(30), y: mm(15) },
    { x: 0, y: mm(30) },
    { x: mm(10), y: mm(15) },
  ];
  const sharp = signedArea(polygon(arrow));
  const inwardOnly = signedArea(roundCorners(arrow, (index) => (index === 3 ? mm(2) : 0)));
  expect(inwardOnly).toBeGreaterThan(sharp);
  expect(inwardOnly - sharp).toBeLessThan(mm(2) ** 2);
});
