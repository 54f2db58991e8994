import type { PagePoint } from './picture.ts';

/** A motion arrow is at least this long, in millimetres. */
const shortest = 9;
/** Distance of the control point from the straight line, as a share of its length. */
const bow = 0.6;

/** The point on the way from one to another. */
export const partWay = (p: PagePoint, q: PagePoint, share: number): PagePoint => ({
  x: p.x + share * (q.x - p.x),
  y: p.y + share * (q.y - p.y),
});

/** Two points moved apart along their line, each by so much. */
export function stretched(p: PagePoint, q: PagePoint, by: number): readonly [PagePoint, PagePoint] {
  const share = by / (Math.hypot(q.x - p.x, q.y - p.y) || 1);
  return [partWay(p, q, -share), partWay(p, q, 1 + share)];
}

/** Two points far enough apart for an arrow. */
export function lengthened(p: PagePoint, q: PagePoint): readonly [PagePoint, PagePoint] {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  return length >= shortest ? [p, q] : stretched(p, q, (shortest - length) / 2);
}

/** The control point of a curve that rises, or bends to the right where it runs up or down. */
export function bowed(from: PagePoint, to: PagePoint): PagePoint {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const upright = Math.abs(dx) < Math.abs(dy) / 4;
  const side = (upright ? Math.sign(dy) : Math.sign(dx)) * bow;
  const middle = partWay(from, to, 0.5);
  return { x: middle.x + side * dy, y: middle.y - side * dx };
}
