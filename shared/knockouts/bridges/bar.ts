import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/plane.ts';
import { polygon } from '../../geometry/walk.ts';

/** A straight bridge from an island to other paper. */
export interface Bar {
  /** The middle of the end that lies on the island. */
  readonly from: Point;
  /** Vector of length 1 from the island outwards. */
  readonly along: Point;
  readonly length: number;
  readonly width: number;
}

/** The rectangle of paper that a bar keeps, clockwise as seen. */
export function barOutline({ from, along, length, width }: Bar): Contour {
  const half = width / 2;
  const at = (forward: number, right: number): Point => ({
    x: Math.round(from.x + along.x * forward - along.y * right),
    y: Math.round(from.y + along.y * forward + along.x * right),
  });
  return polygon([at(0, -half), at(length, -half), at(length, half), at(0, half)]);
}

/** How far apart the middle lines of two bars are. */
export function distanceBetween(one: Bar, other: Bar): number {
  if (crosses(one, other) && crosses(other, one)) return 0;
  return Math.min(
    ...ends(one).map((p) => distanceTo(other, p)),
    ...ends(other).map((p) => distanceTo(one, p)),
  );
}

const ends = ({ from, along, length }: Bar): readonly [Point, Point] => [
  from,
  { x: from.x + along.x * length, y: from.y + along.y * length },
];

const asideOf = ({ from, along }: Bar, p: Point): number =>
  (p.x - from.x) * along.y - (p.y - from.y) * along.x;

/** Whether the ends of a bar lie on either side of another's line. */
function crosses(one: Bar, other: Bar): boolean {
  const [a, b] = ends(one);
  return asideOf(other, a) < 0 !== asideOf(other, b) < 0;
}

function distanceTo({ from, along, length }: Bar, p: Point): number {
  const forward = (p.x - from.x) * along.x + (p.y - from.y) * along.y;
  const nearest = Math.min(length, Math.max(0, forward));
  return Math.hypot(p.x - from.x - along.x * nearest, p.y - from.y - along.y * nearest);
}
