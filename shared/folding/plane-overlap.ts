import type { Point } from '../geometry/plane.ts';

/** Less than this, in nanometres, is rounding. */
const SLIP = 1000;

/** Whether two convex polygons in one plane share more than their edges: then no edge of either parts them. */
export const shareGround = (one: readonly Point[], other: readonly Point[]): boolean =>
  !partsAny(one, other) && !partsAny(other, one);

function partsAny(polygon: readonly Point[], other: readonly Point[]): boolean {
  const sign = Math.sign(twiceArea(polygon));
  // what is seen edge-on covers nothing
  if (sign === 0) return true;
  return polygon.some((a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    return (
      length > 0 &&
      other.every(({ x, y }) => (sign * ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x))) / length <= SLIP)
    );
  });
}

/** Positive for corners that run clockwise as seen with y down. */
export const twiceArea = (polygon: readonly Point[]): number =>
  polygon.reduce((sum, a, index) => {
    const b = polygon[(index + 1) % polygon.length] ?? a;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
