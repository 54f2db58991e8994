import type { Point } from './plane.ts';

/** A cubic Bézier curve with both of its ends. */
export type Cubic = readonly [Point, Point, Point, Point];

/** The point between two at a share of the way. */
export const between = (p: Point, q: Point, share: number): Point => ({
  x: p.x + (q.x - p.x) * share,
  y: p.y + (q.y - p.y) * share,
});

/** One coordinate of a cubic at t, from the coordinate of its four points. */
export function coordinateAt(p0: number, p1: number, p2: number, p3: number, t: number): number {
  const s = 1 - t;
  return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
}

/** The point of a cubic at t from 0 to 1. */
export const pointAt = ([a, b, c, d]: Cubic, t: number): Point => ({
  x: coordinateAt(a.x, b.x, c.x, d.x, t),
  y: coordinateAt(a.y, b.y, c.y, d.y, t),
});

/** Both halves of a cubic cut at t (de Casteljau). */
export function cutAt([a, b, c, d]: Cubic, t: number): readonly [Cubic, Cubic] {
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const cd = between(c, d, t);
  const abc = between(ab, bc, t);
  const bcd = between(bc, cd, t);
  const middle = between(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

/** The part of a cubic from one t to another, walked backward where the first is the greater. */
export function partOf(cubic: Cubic, from: number, to: number): Cubic {
  if (from > to) {
    const [a, b, c, d] = partOf(cubic, to, from);
    return [d, c, b, a];
  }
  const head = to < 1 ? cutAt(cubic, to)[0] : cubic;
  return from > 0 ? cutAt(head, from / to)[1] : head;
}

/** Where between 0 and 1 one coordinate of a cubic turns back, ascending. */
export function turningPoints(p0: number, p1: number, p2: number, p3: number): number[] {
  // derivative / 3: a·t² + 2·b·t + c
  const a = p3 - p0 + 3 * (p1 - p2);
  const b = p0 - 2 * p1 + p2;
  const c = p1 - p0;
  return rootsOf(a, b, c)
    .filter((t) => t > 0 && t < 1)
    .sort((one, other) => one - other);
}

/** Real roots of a·t² + 2·b·t + c, by the form that does not cancel (Press et al., Numerical Recipes, 5.6). */
function rootsOf(a: number, b: number, c: number): number[] {
  const discriminant = b * b - a * c;
  if (discriminant < 0) return [];
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
  const roots: number[] = [];
  if (a !== 0) roots.push(q / a);
  if (q !== 0) roots.push(c / q);
  return roots;
}
