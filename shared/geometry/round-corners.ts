import { arcCurves } from './arcs.ts';
import type { Contour, Stretch } from './contour.ts';
import type { Point } from './plane.ts';

interface Corner {
  readonly at: Point;
  /** Unit vectors along the side that comes in and the side that goes out. */
  readonly into: Point;
  readonly out: Point;
  /** How far along both sides an arc of radius 1 starts and ends: the tangent of half the angle turned. */
  readonly reach: number;
  /** Degrees turned; positive to the right, clockwise as seen. */
  readonly turned: number;
  readonly sideIn: number;
}

function cornersOf(points: readonly Point[]): Corner[] {
  return points.map((at, index) => {
    const before = points.at(index - 1) ?? at;
    const after = points[index + 1] ?? points[0] ?? at;
    const sideIn = Math.hypot(at.x - before.x, at.y - before.y);
    const sideOut = Math.hypot(after.x - at.x, after.y - at.y);
    const into = { x: (at.x - before.x) / sideIn, y: (at.y - before.y) / sideIn };
    const out = { x: (after.x - at.x) / sideOut, y: (after.y - at.y) / sideOut };
    const turned = Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y);
    return { at, into, out, reach: Math.tan(Math.abs(turned) / 2), turned: (turned * 180) / Math.PI, sideIn };
  });
}

/**
 * The largest radius in whole nanometres that every corner of a polygon can have at once: arcs that share a side do
 * not overlap on it.
 */
export function largestCorner(points: readonly Point[]): number {
  const corners = cornersOf(points);
  const radii = corners.map(({ reach, sideIn }, index) => {
    const before = corners.at(index - 1)?.reach ?? 0;
    return sideIn / (reach + before);
  });
  // a hundredth of a nanometre for rounding, so that half of a whole side is not refused
  return Math.floor(Math.min(...radii) + 0.01);
}

/**
 * A polygon with each corner replaced by an arc that touches both of its sides.
 * @param points its corners, no three in one line back and forth
 * @param radius one for all, or each corner's own by its number; 0 keeps a corner sharp. At most
 *   {@link largestCorner} where it is one for all; where arcs on one side would overlap this throws
 */
export function roundCorners(
  points: readonly Point[],
  radius: number | ((index: number) => number),
): Contour {
  const corners = cornersOf(points);
  const radiusAt = typeof radius === 'number' ? () => radius : radius;
  const reaches = corners.map(({ reach }, index) => reach * radiusAt(index));
  const stretches: Stretch[] = [];
  for (const [index, corner] of corners.entries()) {
    const reach = reaches[index] ?? 0;
    const before = reaches.at(index - 1) ?? 0;
    const straight = corner.sideIn - before - reach;
    // a side that two arcs use up keeps a rest of rounding errors
    if (straight < -1) throw new Error(`corners ${radiusAt(index)} nm round overlap on a side`);
    const start = along(corner.at, corner.into, -reach);
    if (straight > 1) stretches.push({ to: start });
    if (reach > 0) stretches.push(...arcAt(corner, radiusAt(index), start));
  }
  const last = stretches.at(-1);
  if (!last) throw new Error('a polygon has sides');
  return { start: last.to, stretches };
}

const along = (p: Point, direction: Point, distance: number): Point => ({
  x: p.x + direction.x * distance,
  y: p.y + direction.y * distance,
});

function arcAt({ at, into, out, reach, turned }: Corner, radius: number, start: Point) {
  const side = Math.sign(turned);
  const centre = along(start, { x: -into.y * side, y: into.x * side }, radius);
  const from = (Math.atan2(start.y - centre.y, start.x - centre.x) * 180) / Math.PI;
  const curves = arcCurves({ centre, radiusX: radius, radiusY: radius, from, to: from + turned });
  const end = along(at, out, reach * radius);
  return curves.map((curve, index) => (index === curves.length - 1 ? { ...curve, to: end } : curve));
}
