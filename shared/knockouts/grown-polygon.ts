import type { Point } from '../geometry/plane.ts';

/**
 * A convex polygon with each of its edges moved outward by its own distance, in nanometres.
 * @param corners clockwise as seen (y runs down)
 * @param by for the edge from each corner to the next
 */
export function grownPolygon(corners: readonly Point[], by: readonly number[]): readonly Point[] {
  const count = corners.length;
  return corners.flatMap((corner, index) => {
    const before = corners.at(index - 1) ?? corner;
    const after = corners[(index + 1) % count] ?? corner;
    const [into, out] = [unit(before, corner), unit(corner, after)];
    const [one, other] = [by.at(index - 1) ?? 0, by[index] ?? 0];
    const turn = into.x * out.y - into.y * out.x;
    // a corner that is none, between two edges of one line: each moves by itself
    if (Math.abs(turn) < 1e-9)
      return one === other
        ? [outward(corner, into, one)]
        : [outward(corner, into, one), outward(corner, out, other)];
    // both edges moved by their normals (y, -x) meet at corner + s·into + t·(-out)
    const along = (other - one * (into.x * out.x + into.y * out.y)) / turn;
    return [outward({ x: corner.x + along * into.x, y: corner.y + along * into.y }, into, one)];
  });
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** The outside lies to the left of an edge of a clockwise polygon, as seen. */
const outward = ({ x, y }: Point, along: Point, by: number): Point => ({
  x: x + by * along.y,
  y: y - by * along.x,
});
