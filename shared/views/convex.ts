import { partBeside } from '../geometry/part-beside.ts';
import type { PagePoint } from './picture.ts';

/** A convex polygon on the page, either way round. */
export type Convex = readonly PagePoint[];

const edgesOf = (polygon: Convex): readonly (readonly [PagePoint, PagePoint])[] =>
  polygon.map((p, index) => [p, polygon[(index + 1) % polygon.length] ?? p]);

/** Square millimetres; positive for corners that run clockwise as seen. */
export function signedArea(polygon: Convex): number {
  let twice = 0;
  for (const [p, q] of edgesOf(polygon)) twice += p.x * q.y - q.x * p.y;
  return twice / 2;
}

/** The centre of a polygon's area. */
export function centreOf(polygon: Convex): PagePoint {
  const [origin] = polygon;
  if (!origin) throw new Error('a polygon without corners has no centre');
  let [x, y, sum] = [0, 0, 0];
  for (const [p, q] of edgesOf(polygon)) {
    const cross = (p.x - origin.x) * (q.y - origin.y) - (q.x - origin.x) * (p.y - origin.y);
    x += (p.x + q.x - 2 * origin.x) * cross;
    y += (p.y + q.y - 2 * origin.y) * cross;
    sum += 3 * cross;
  }
  return sum === 0 ? origin : { x: origin.x + x / sum, y: origin.y + y / sum };
}

/** How far a point lies inside of the line of each edge, in millimetres; the least is negative outside. */
export function depthIn(polygon: Convex, { x, y }: PagePoint): number {
  const sign = signedArea(polygon) < 0 ? -1 : 1;
  return edgesOf(polygon).reduce((least, [p, q]) => {
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    if (length === 0) return least;
    return Math.min(least, (sign * ((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x))) / length);
  }, Infinity);
}

/** Half the length of the shorter piece into which a point cuts the polygon's chord in a direction. */
export function reachIn(polygon: Convex, from: PagePoint, direction: PagePoint): number {
  let [back, ahead] = [-Infinity, Infinity];
  for (const [p, q] of edgesOf(polygon)) {
    const [ex, ey] = [q.x - p.x, q.y - p.y];
    const across = direction.x * ey - direction.y * ex;
    if (Math.abs(across) < 1e-9) continue;
    const along = ((p.x - from.x) * ey - (p.y - from.y) * ex) / across;
    if (along >= 0) ahead = Math.min(ahead, along);
    else back = Math.max(back, along);
  }
  return Math.min(ahead, -back);
}

/** Pieces smaller than this, in square millimetres, are left by rounding. */
const crumb = 1e-3;

const isPiece = (polygon: Convex): boolean => polygon.length >= 3 && Math.abs(signedArea(polygon)) > crumb;

/** What is left of a polygon when another lies over it, as convex pieces. */
export function without(polygon: Convex, over: Convex): readonly Convex[] {
  const inside = signedArea(over) < 0 ? -1 : 1;
  const outside = inside === 1 ? -1 : 1;
  const pieces: Convex[] = [];
  let rest = polygon;
  for (const [p, q] of edgesOf(over)) {
    const piece = partBeside(rest, p, q, outside);
    if (isPiece(piece)) pieces.push(piece);
    rest = partBeside(rest, p, q, inside);
    // nothing of it lies under the other: it stays whole
    if (!isPiece(rest)) return [polygon];
  }
  return pieces;
}

/** The part of a polygon within an upright rectangle; empty or without area where there is none. */
export function clipToBox(
  polygon: Convex,
  { left, right, top, bottom }: { left: number; right: number; top: number; bottom: number },
): Convex {
  const corners = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  return edgesOf(corners).reduce((rest, [p, q]) => partBeside(rest, p, q, 1), polygon);
}
