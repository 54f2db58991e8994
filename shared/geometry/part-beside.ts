import type { Point } from './plane.ts';

/** The part of a convex polygon on one side of the line from `p` to `q`: `side` 1 is its right as seen, -1 its left. */
export function partBeside(polygon: readonly Point[], p: Point, q: Point, side: 1 | -1): readonly Point[] {
  const [across, down] = [side * (q.x - p.x), side * (q.y - p.y)];
  const depths = polygon.map(({ x, y }) => across * (y - p.y) - down * (x - p.x));
  // pictures ask this thousands of times, and most polygons lie on one side
  if (depths.every((depth) => depth >= 0)) return polygon;
  const part: Point[] = [];
  for (const [index, a] of polygon.entries()) {
    const next = (index + 1) % polygon.length;
    const [b, here, there] = [polygon[next] ?? a, depths[index] ?? 0, depths[next] ?? 0];
    if (here >= 0) part.push(a);
    if (here * there >= 0) continue;
    const share = here / (here - there);
    part.push({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
  }
  return part;
}
