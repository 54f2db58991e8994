import { type Contour, isCurve, type Shape } from './contour.ts';
import { coordinateAt, turningPoints } from './cubic.ts';
import type { Point } from './plane.ts';
import { walk } from './walk.ts';

/** How often a contour goes round a point clockwise as seen; for a point on the contour either neighbour's answer. */
export function windingAround(contour: Contour, p: Point): number {
  let winding = 0;
  walk(contour, (from, stretch) => {
    const { to } = stretch;
    if (!isCurve(stretch)) {
      winding += crossing(
        from.y,
        to.y,
        p,
        () => from.x + ((p.y - from.y) / (to.y - from.y)) * (to.x - from.x),
      );
      return;
    }
    const [c, d] = stretch.control;
    const y = (t: number) => coordinateAt(from.y, c.y, d.y, to.y, t);
    const x = (t: number) => coordinateAt(from.x, c.x, d.x, to.x, t);
    const least = Math.min(from.y, c.y, d.y, to.y);
    const most = Math.max(from.y, c.y, d.y, to.y);
    if (p.y < least || p.y > most || p.x > Math.max(from.x, c.x, d.x, to.x)) return;
    let start = 0;
    let startY = from.y;
    for (const end of [...turningPoints(from.y, c.y, d.y, to.y), 1]) {
      const endY = end === 1 ? to.y : y(end);
      winding += crossing(startY, endY, p, () => x(whereReached(y, start, end, p.y)));
      start = end;
      startY = endY;
    }
  });
  return winding;
}

/** What a stretch that only rises or only falls adds: it counts where it crosses the ray from p to the right. */
function crossing(fromY: number, toY: number, p: Point, crossesAt: () => number): number {
  if (fromY <= p.y === toY <= p.y) return 0;
  if (crossesAt() < p.x) return 0;
  return toY > fromY ? 1 : -1;
}

/** Where a function that only rises or only falls between two parameters reaches a value. */
function whereReached(f: (t: number) => number, start: number, end: number, value: number): number {
  const rises = f(end) > f(start);
  let low = start;
  let high = end;
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2;
    if (f(middle) < value === rises) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Whether a point lies in a figure, by the nonzero rule; exact for curves, undecided on a contour itself. */
export const isInside = (shape: Shape, p: Point): boolean =>
  shape.reduce((winding, contour) => winding + windingAround(contour, p), 0) !== 0;
