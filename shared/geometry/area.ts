import { type Contour, isCurve, type Shape } from './contour.ts';
import type { Point } from './plane.ts';
import { walk } from './walk.ts';

/**
 * The area inside a contour in nm², positive where it runs clockwise as seen (y runs down), else negative.
 * Exact for curves up to the rounding of numbers: Green's theorem, ½ ∮ x dy − y dx, whose integral along a cubic
 * with points P0…P3 is (6·P0×P1 + 3·P0×P2 + P0×P3 + 3·P1×P2 + 3·P1×P3 + 6·P2×P3) / 20.
 */
export function signedArea(contour: Contour): number {
  const { start } = contour;
  const cross = (p: Point, q: Point): number =>
    (p.x - start.x) * (q.y - start.y) - (p.y - start.y) * (q.x - start.x);
  let area = 0;
  walk(contour, (from, stretch) => {
    const { to } = stretch;
    if (!isCurve(stretch)) {
      area += cross(from, to) / 2;
      return;
    }
    const [c, d] = stretch.control;
    area +=
      (6 * (cross(from, c) + cross(d, to)) +
        3 * (cross(from, d) + cross(c, d) + cross(c, to)) +
        cross(from, to)) /
      20;
  });
  return area;
}

/** The area of a figure in nm²: of its outer contours less its counters. */
export const areaOf = (shape: Shape): number => shape.reduce((sum, contour) => sum + signedArea(contour), 0);

/** Whether a contour is an outer one of a figure, not a counter. */
export const isOuter = (contour: Contour): boolean => signedArea(contour) > 0;
