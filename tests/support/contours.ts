import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { type Contour, isCurve, type Shape, type Stretch } from '../../shared/geometry/contour.ts';
import { shift, turn } from '../../shared/geometry/move-shape.ts';
import { compose, type Isometry, type Point } from '../../shared/geometry/plane.ts';
import { walk } from '../../shared/geometry/walk.ts';
import { mm } from '../../shared/lengths/nanometres.ts';

/**
 * How much larger than π·r² four cubics are at most, as a share: 2.8e-4 by numeric integration of the distance
 * from the circle, which is 0 to 2.73e-4 of the radius all around (Goldapp 1991).
 */
export const CIRCLE_AREA_EXCESS = 2.81e-4;

/** A number of millimetres, in nanometres. */
export const millimetres = (least: number, most: number): fc.Arbitrary<number> =>
  fc.double({ min: least, max: most, noNaN: true }).map(mm);

const polar = (angle: number, radius: number): Point => ({
  x: radius * Math.cos(angle),
  y: radius * Math.sin(angle),
});

interface Spoke {
  readonly radius: number;
  readonly isCurved: boolean;
}

/**
 * A closed line round (0, 0) through spokes at equal angles, clockwise as seen, of lines and curves. Seen from
 * (0, 0) the points of each curve's control polygon follow one another, so the curve does too: P × P′ has Bernstein
 * coefficients that are cross products of such points, all positive. It cannot cross itself.
 */
function blob(spokes: readonly Spoke[]): Contour {
  const step = (2 * Math.PI) / spokes.length;
  const at = (index: number) => polar(index * step, spokes[index % spokes.length]?.radius ?? 0);
  const stretches = spokes.map(({ isCurved }, index): Stretch => {
    const to = at(index + 1);
    if (!isCurved) return { to };
    const reach = Math.tan(step / 3.5);
    const p = at(index);
    const leaving = { x: p.x - p.y * reach, y: p.y + p.x * reach };
    const arriving = { x: to.x + to.y * reach, y: to.y - to.x * reach };
    return { control: [leaving, arriving], to };
  });
  return { start: stretches.at(-1)?.to ?? at(0), stretches };
}

/** Closed lines of lines and curves, about 10 mm to 40 mm across, that do not cross themselves. */
export const blobs: fc.Arbitrary<Contour> = fc
  .array(fc.record({ radius: millimetres(5, 20), isCurved: fc.boolean() }), { minLength: 3, maxLength: 9 })
  .map(blob);

/** Motions up to 30 mm away, some of which turn the paper over. */
export const motions: fc.Arbitrary<Isometry> = fc
  .record({
    degrees: fc.oneof(fc.constantFrom(0, 90, 180, 270), fc.double({ min: 0, max: 360, noNaN: true })),
    x: millimetres(-30, 30),
    y: millimetres(-30, 30),
    isOver: fc.boolean(),
  })
  .map(({ degrees, x, y, isOver }) => {
    const turned = turn(degrees);
    const over: Isometry = { a: -1, b: 0, c: 0, d: 1, tx: 0, ty: 0 };
    return compose(shift(x, y), isOver ? compose(turned, over) : turned);
  });

/** Corners of convex polygons, clockwise as seen: points of an ellipse at angles that grow. */
export const convexPolygons: fc.Arbitrary<Point[]> = fc
  .record({
    parts: fc.array(fc.double({ min: 0.2, max: 1, noNaN: true }), { minLength: 3, maxLength: 9 }),
    across: millimetres(5, 30),
    along: millimetres(5, 30),
  })
  .map(({ parts, across, along }) => {
    const sum = parts.reduce((total, part) => total + part, 0);
    let angle = 0;
    return parts.map((part) => {
      angle += (part / sum) * 2 * Math.PI;
      return { x: Math.round(across * Math.cos(angle)), y: Math.round(along * Math.sin(angle)) };
    });
  });

/** A curve as bezier-js, by other authors, has it. */
export const bezierOf = (from: Point, stretch: Stretch): Bezier | undefined =>
  isCurve(stretch)
    ? new Bezier([from, ...stretch.control, stretch.to].map(({ x, y }) => ({ x, y })))
    : undefined;

/** Points along a contour by bezier-js: its corners, and `per` − 1 more on each curve. */
export function sampled(contour: Contour, per = 100): Point[] {
  const points: Point[] = [];
  walk(contour, (from, stretch) => {
    const curve = bezierOf(from, stretch);
    if (curve) points.push(...curve.getLUT(per).slice(0, -1));
    else points.push(from);
  });
  return points.map(({ x, y }) => ({ x, y }));
}

/** How far a point is from the nearest side of closed polygons. */
export function distanceTo(polygons: readonly (readonly Point[])[], p: Point): number {
  let least = Infinity;
  for (const points of polygons) {
    for (const [index, a] of points.entries()) {
      const b = points[(index + 1) % points.length] ?? a;
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const square = dx * dx + dy * dy;
      const share = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
      const t = Math.min(1, Math.max(0, share));
      least = Math.min(least, Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy));
    }
  }
  return least;
}

/** How many stretches a figure has. */
export const stretchCount = (shape: Shape): number =>
  shape.reduce((sum, { stretches }) => sum + stretches.length, 0);
