import type { Point } from '../geometry/plane.ts';

/** Cut and tie lengths of a perforation, in nanometres. */
export interface Perforation {
  readonly cut: number;
  readonly tie: number;
}

export type Segment = readonly [Point, Point];

/**
 * The cuts of a perforated score, dash by dash. Between two neighbouring points, where other scores meet this
 * one or the paper ends, the dashes are centred, so that every crossing and every end falls on a tie. A
 * stretch too short for a whole cut gets one shorter cut, a third of its length.
 */
export function perforate(points: readonly Point[], perforation: Perforation): Segment[] {
  return points.slice(1).flatMap((to, index) => dashes(points[index] ?? to, to, perforation));
}

function dashes(from: Point, to: Point, { cut, tie }: Perforation): Segment[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const count = Math.floor((length - tie) / (cut + tie));
  if (count < 1) return [between(from, to, 1 / 3, 2 / 3)];
  const start = (length - count * cut - (count - 1) * tie) / 2;
  return Array.from({ length: count }, (_, index) => {
    const begin = start + index * (cut + tie);
    return between(from, to, begin / length, (begin + cut) / length);
  });
}

const between = (from: Point, to: Point, start: number, end: number): Segment => [
  along(from, to, start),
  along(from, to, end),
];

/** The point at a share of the way. */
export const along = (from: Point, to: Point, share: number): Point => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
});
