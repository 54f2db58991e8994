import type { CreasePattern } from '../creases/crease-pattern.ts';
import { areParallel, heightOver, type LeafPlane, onPlane } from './leaf-planes.ts';
import type { Point3 } from './space.ts';

/** Less than this, in nanometres, is rounding: paper touches. */
const SLIP = 1000;

/** Where two leaves of the piece, set up in space, would have to pass through each other. */
export function passingThrough({ faces }: CreasePattern, planes: readonly LeafPlane[]): readonly string[] {
  return planes.flatMap((one, index) =>
    planes.slice(index + 1).flatMap((other) => {
      if (areApart(one, other) || areParallel(one, other)) return [];
      return one.polygons.flatMap((polygon, at) =>
        other.polygons.flatMap((beside, there) => {
          if (!crosses(one, polygon, other, beside)) return [];
          const [panel, second] = [faces[one.faces[at] ?? -1], faces[other.faces[there] ?? -1]];
          return [`${panel?.panel} passes through ${second?.panel} when the piece is set up`];
        }),
      );
    }),
  );
}

const areApart = (one: LeafPlane, other: LeafPlane): boolean =>
  (['x', 'y', 'z'] as const).some(
    (axis) => one.most[axis] <= other.least[axis] + SLIP || other.most[axis] <= one.least[axis] + SLIP,
  );

/** Whether each of two convex polygons has corners well on both sides of the other's plane, and they meet there. */
function crosses(
  one: LeafPlane,
  polygon: readonly Point3[],
  other: LeafPlane,
  beside: readonly Point3[],
): boolean {
  const [from, to] = cutBy(one, beside);
  if (!from || !to || cutBy(other, polygon).length === 0) return false;
  const [start, end] = [onPlane(one, from), onPlane(one, to)];
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const share = shareWithin(
    polygon.map((corner) => onPlane(one, corner)),
    start,
    end,
  );
  return share * length > SLIP;
}

/** The two points where a plane cuts a polygon that has corners on both of its sides; none where it has not. */
function cutBy(plane: LeafPlane, polygon: readonly Point3[]): readonly Point3[] {
  const heights = polygon.map((corner) => heightOver(plane, corner));
  if (!heights.some((height) => height > SLIP) || !heights.some((height) => height < -SLIP)) return [];
  return polygon.flatMap((p, index) => {
    const next = (index + 1) % polygon.length;
    const [q, here, there] = [polygon[next], heights[index] ?? 0, heights[next] ?? 0];
    if (!q || here > 0 === there > 0) return [];
    const part = here / (here - there);
    return [{ x: p.x + part * (q.x - p.x), y: p.y + part * (q.y - p.y), z: p.z + part * (q.z - p.z) }];
  });
}

interface Flat {
  readonly x: number;
  readonly y: number;
}

/** The share of a segment that lies inside a convex polygon, either way round. */
function shareWithin(polygon: readonly Flat[], p: Flat, q: Flat): number {
  let [start, end] = [0, 1];
  const sign = Math.sign(
    polygon.reduce((sum, a, index) => {
      const b = polygon[(index + 1) % polygon.length] ?? a;
      return sum + a.x * b.y - b.x * a.y;
    }, 0),
  );
  for (const [index, a] of polygon.entries()) {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) continue;
    const depth = ({ x, y }: Flat) => (sign * ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x))) / length;
    const [from, to] = [depth(p), depth(q)];
    if (from <= SLIP && to <= SLIP) return 0;
    if (from < SLIP) start = Math.max(start, (SLIP - from) / (to - from));
    if (to < SLIP) end = Math.min(end, (from - SLIP) / (from - to));
    if (start >= end) return 0;
  }
  return end - start;
}
