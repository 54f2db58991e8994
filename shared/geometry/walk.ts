import { type Contour, isCurve, type Shape, type Stretch } from './contour.ts';
import type { Point } from './plane.ts';

/** What is done for each stretch of a contour: where it starts, itself, and its number. */
export type Visit = (from: Point, stretch: Stretch, index: number) => void;

/** Goes once along a contour. */
export function walk({ start, stretches }: Contour, visit: Visit): void {
  let from = start;
  for (const [index, stretch] of stretches.entries()) {
    visit(from, stretch, index);
    from = stretch.to;
  }
}

/** The contour through points, all of its sides straight; the last side leads back to the first point. */
export function polygon(points: readonly Point[]): Contour {
  const [start] = points;
  if (!start) throw new Error('a polygon has points');
  return { start, stretches: [...points.slice(1), start].map((to) => ({ to })) };
}

/** The same line walked the other way, which makes an outer contour a counter and back. */
export function reverse(contour: Contour): Contour {
  const stretches: Stretch[] = [];
  walk(contour, (from, stretch) => {
    stretches.push(
      isCurve(stretch) ? { control: [stretch.control[1], stretch.control[0]], to: from } : { to: from },
    );
  });
  return { start: contour.start, stretches: stretches.reverse() };
}

/** Every stretch as it would be with all of its points changed by one function. */
export const mapPoints = ({ start, stretches }: Contour, change: (p: Point) => Point): Contour => ({
  start: change(start),
  stretches: stretches.map((stretch) =>
    isCurve(stretch)
      ? { control: [change(stretch.control[0]), change(stretch.control[1])], to: change(stretch.to) }
      : { to: change(stretch.to) },
  ),
});

/** A figure with all of its points changed by one function that keeps or loses the sense of turning. */
export const mapShape = (shape: Shape, change: (p: Point) => Point, turnsOver: boolean): Shape =>
  shape.map((contour) => {
    const changed = mapPoints(contour, change);
    return turnsOver ? reverse(changed) : changed;
  });
