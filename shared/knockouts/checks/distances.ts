import type { Point } from '../../geometry/plane.ts';

/** How far two things are apart, in nanometres, and the point of the first that is nearest. */
export interface Gap {
  readonly distance: number;
  readonly at: Point;
}

const none: Gap = { distance: Infinity, at: { x: 0, y: 0 } };

/** The point of a segment that is nearest to a point. */
function nearestOn(from: Point, to: Point, { x, y }: Point): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / square));
  return { x: from.x + share * dx, y: from.y + share * dy };
}

const sideOf = (from: Point, to: Point, p: Point): number =>
  (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);

function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return sideOf(a, b, c) * sideOf(a, b, d) <= 0 && sideOf(c, d, a) * sideOf(c, d, b) <= 0;
}

/**
 * From the edges of polygons to a segment; 0 where one crosses it, but not where it lies within one.
 * @param most larger gaps are not looked for: then the distance is infinite
 */
export function gapToSegment(
  polygons: readonly (readonly Point[])[],
  from: Point,
  to: Point,
  most = Infinity,
): Gap {
  let best = { ...none, distance: most * (1 + 1e-9) };
  let isFound = false;
  const take = (at: Point, other: Point): void => {
    const distance = Math.hypot(at.x - other.x, at.y - other.y);
    if (distance >= best.distance) return;
    best = { distance, at };
    isFound = true;
  };
  for (const polygon of polygons) {
    for (const [index, p] of polygon.entries()) {
      const q = polygon[(index + 1) % polygon.length] ?? p;
      if (boxGap(p, q, from, to) >= best.distance) continue;
      if (cross(p, q, from, to) && boxGap(p, q, from, to) === 0) return { distance: 0, at: p };
      take(p, nearestOn(from, to, p));
      for (const end of [from, to]) take(nearestOn(p, q, end), end);
    }
  }
  return isFound ? best : none;
}

/** Whether the edges of two sets of polygons come within a distance of each other. */
export const comeWithin = (
  polygons: readonly (readonly Point[])[],
  others: readonly (readonly Point[])[],
  distance: number,
): boolean =>
  polygons.some((polygon) =>
    others.some((other) =>
      other.some(
        (from, index) =>
          gapToSegment([polygon], from, other[(index + 1) % other.length] ?? from, distance).distance <=
          distance,
      ),
    ),
  );

/** How far the boxes of two segments are apart at least. */
function boxGap(p: Point, q: Point, from: Point, to: Point): number {
  const apart = (a: number, b: number, c: number, d: number) =>
    Math.max(0, Math.min(c, d) - Math.max(a, b), Math.min(a, b) - Math.max(c, d));
  return Math.hypot(apart(p.x, q.x, from.x, to.x), apart(p.y, q.y, from.y, to.y));
}

/** Between the edges of two sets of polygons. */
export function gapBetween(
  polygons: readonly (readonly Point[])[],
  others: readonly (readonly Point[])[],
): Gap {
  let best = none;
  for (const other of others) {
    for (const [index, from] of other.entries()) {
      const gap = gapToSegment(polygons, from, other[(index + 1) % other.length] ?? from, best.distance);
      if (gap.distance < best.distance) best = gap;
    }
  }
  return best;
}
