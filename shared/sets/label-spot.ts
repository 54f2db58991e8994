import type { Point } from '../geometry/plane.ts';

/** Places tried along each side of the figure's box, the middle one first. */
const tried = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9];

/** A place counts as better only if it has so much more room: labels stay in the middle where they may. */
const clearly = 1.15;

/** A place for a label within a figure, and how far it is from every line of it. */
export interface LabelSpot extends Point {
  readonly room: number;
}

/**
 * Where in a figure a label has most room: by the even-odd rule inside, away from its edges and from what is cut out of it.
 * @param lines closed lines as their corners, the outer one first
 */
export function labelSpot(lines: readonly (readonly Point[])[]): LabelSpot {
  const outer = lines[0] ?? [];
  const [xs, ys] = [outer.map(({ x }) => x), outer.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const sides = lines.flatMap((line) =>
    line.map((from, index): Side => [from, line[(index + 1) % line.length] ?? from]),
  );
  let best: LabelSpot = { x: left + width / 2, y: top + height / 2, room: 0 };
  for (const along of tried)
    for (const across of tried) {
      const spot = { x: left + across * width, y: top + along * height };
      if (!isWithin(sides, spot)) continue;
      const room = sides.reduce(
        (least, side) => Math.min(least, fromSide(side, spot)),
        Number.POSITIVE_INFINITY,
      );
      if (room > clearly * best.room) best = { ...spot, room };
    }
  return best;
}

type Side = readonly [from: Point, to: Point];

/** A ray to the right crosses an odd number of sides. */
const isWithin = (sides: readonly Side[], { x, y }: Point): boolean =>
  sides.filter(
    ([from, to]) =>
      from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x),
  ).length %
    2 ===
  1;

function fromSide([from, to]: Side, { x, y }: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / square;
  const at = Math.min(1, Math.max(0, share));
  return Math.hypot(x - from.x - at * dx, y - from.y - at * dy);
}
