import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../shared/geometry/arc-length.ts';
import { ellipse } from '../../shared/geometry/arcs.ts';
import { areaOf } from '../../shared/geometry/area.ts';
import { intersect, subtract, unite } from '../../shared/geometry/clip/combine.ts';
import { offset } from '../../shared/geometry/clip/offset.ts';
import type { Shape } from '../../shared/geometry/contour.ts';
import { moveContour } from '../../shared/geometry/move-shape.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { polygon } from '../../shared/geometry/walk.ts';
import { naturalSize, outlineOf } from '../../shared/knockouts/shapes/registry.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { blobs, convexPolygons, motions } from '../support/contours.ts';
import { jtsDifference, jtsFigure, jtsGrown, jtsIntersection, jtsUnion } from '../support/jts.ts';
import { readShape, writtenShapes } from '../support/shape-specs.ts';

/*
 * Figures by jsts (the JTS Topology Suite, V. Solutions and others) and curves by bezier-js (P. Jacobs): neither
 * shares code with Clipper2 or with hemfold.
 */
const mm2 = (shape: Shape): number => areaOf(shape) / mm(1) ** 2;

/** The least of a polygon's inner angles, in degrees. */
function sharpest(points: readonly Point[]): number {
  const angles = points.map((p, index) => {
    const before = points.at(index - 1) ?? p;
    const after = points[(index + 1) % points.length] ?? p;
    const [ux, uy, vx, vy] = [before.x - p.x, before.y - p.y, after.x - p.x, after.y - p.y];
    return (Math.acos((ux * vx + uy * vy) / (Math.hypot(ux, uy) * Math.hypot(vx, vy))) * 180) / Math.PI;
  });
  return Math.min(...angles);
}

/** Both a figure's edge and theirs are at most this far from the true one, in mm, along so many mm. */
const close = (one: number, other: number, error: number, around: number): void => {
  expect(Math.abs(one - other)).toBeLessThan(error * around + 1e-6);
};

const pairs = fc
  .record({ one: blobs, other: blobs, by: motions })
  .map(({ one, other, by }): [Shape, Shape] => [[one], [moveContour(other, by)]]);

describe('set operations on random figures have the areas that jsts finds', () => {
  test.each([
    ['union', (a: Shape, b: Shape) => unite([a, b]), jtsUnion],
    ['intersection', intersect, jtsIntersection],
    ['difference', subtract, jtsDifference],
  ])('%s', (_name, ours, theirs) => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const figure = theirs(jtsFigure(a, 300), jtsFigure(b, 300));
        // 2.5 µm ours, under 1 µm theirs, over 2 · 150 mm
        close(mm2(ours(a, b)), figure.getArea(), 0.0035, 300);
      }),
    );
  });

  test('the check fails on an edge that is 20 µm off', () => {
    const one: Shape = [ellipse({ x: 0, y: 0 }, mm(10), mm(10))];
    const grown: Shape = [ellipse({ x: 0, y: 0 }, mm(10.02), mm(10.02))];
    expect(() => close(mm2(grown), jtsFigure(one, 300).getArea(), 0.0035, 2 * Math.PI * 10)).toThrow();
  });
});

describe('offsets have the areas that jsts finds', () => {
  const distance = fc.double({ min: 0.05, max: 5, noNaN: true });

  test('of random figures, out and in, with round joins', () => {
    fc.assert(
      fc.property(blobs, distance, fc.boolean(), (blob, d, isOutward) => {
        const signed = isOutward ? d : -d;
        const theirs = jtsGrown(jtsFigure([blob], 300), signed, 'round').getArea();
        close(mm2(offset([blob], mm(signed))), theirs, 0.02, 180);
      }),
      { numRuns: 60 },
    );
  });

  test('of convex polygons without sharp corners, with mitred joins', () => {
    fc.assert(
      fc.property(convexPolygons, distance, (points, d) => {
        fc.pre(sharpest(points) > 61);
        const convex: Shape = [polygon(points)];
        const theirs = jtsGrown(jtsFigure(convex), d, 'mitred').getArea();
        close(mm2(offset(convex, mm(d), 'mitred')), theirs, 0.001, 200);
      }),
    );
  });

  test.each(Object.keys(writtenShapes))('of the shape %s', (name) => {
    const written = writtenShapes[name];
    if (!written) throw new Error(name);
    const drawn = written
      .map((value) => readShape(value))
      .filter(({ spec, faults }) => spec !== undefined && faults.length === 0);
    fc.assert(
      fc.property(drawn, distance, ({ spec }, d) => {
        fc.pre(spec !== undefined && Math.max(...Object.values(naturalSize(spec))) < mm(150));
        if (!spec) return;
        const outline = outlineOf(spec);
        const around = outline.reduce((sum, contour) => sum + lengthOf(contour), 0) / mm(1);
        const theirs = jtsGrown(jtsFigure(outline, 100), d, 'round').getArea();
        close(mm2(offset(outline, mm(d))), theirs, 0.02, around + 2 * Math.PI * d);
      }),
      { numRuns: 15 },
    );
  });
});
