import { type Contour, isCurve } from './contour.ts';
import { type Cubic, cutAt } from './cubic.ts';
import type { Point } from './plane.ts';
import { walk } from './walk.ts';

const distance = (p: Point, q: Point): number => Math.hypot(q.x - p.x, q.y - p.y);

/**
 * The length of a cubic, within `error`: halved until chord and control polygon say nearly the same. The mean of
 * both errs far less than their difference does.
 * Source: J. Gravesen, Adaptive subdivision and the length and energy of Bézier curves, Computational Geometry 8, 1997.
 */
function cubicLength(cubic: Cubic, error: number, depth = 0): number {
  const [a, b, c, d] = cubic;
  const chord = distance(a, d);
  const around = distance(a, b) + distance(b, c) + distance(c, d);
  if (around - chord <= error || depth === 24) return (chord + around) / 2;
  const [first, second] = cutAt(cubic, 0.5);
  return cubicLength(first, error / 2, depth + 1) + cubicLength(second, error / 2, depth + 1);
}

/** The length of a stretch in nanometres, a curve's within 0.1 µm. */
export function stretchLength(from: Point, stretch: Contour['stretches'][number]): number {
  if (!isCurve(stretch)) return distance(from, stretch.to);
  return cubicLength([from, ...stretch.control, stretch.to], 100);
}

/** How long a contour is, in nanometres; each curve's share within 0.1 µm. */
export function lengthOf(contour: Contour): number {
  let length = 0;
  walk(contour, (from, stretch) => {
    length += stretchLength(from, stretch);
  });
  return length;
}
