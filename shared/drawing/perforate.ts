import type { Point } from '../geometry/plane.ts';
import { mm } from '../lengths/nanometres.ts';

/** Cut and tie lengths of a perforation, in nanometres. */
export interface Perforation {
  readonly cut: number;
  readonly tie: number;
}

/** Half of the paper stays along a fold that must last; common practice. */
export const usualPerforation: Perforation = { cut: mm(1.5), tie: mm(1.5) };

export type Segment = readonly [Point, Point];

/** At crossings and at the paper's edge this much paper stays at least, or a fold tears there; common practice. */
const endTie = mm(3);

/**
 * The cuts of a perforated score, dash by dash. Between two neighbouring points, where other scores meet this
 * one or the paper ends, the dashes are centred, so that every crossing and every end falls on a tie of 3 mm
 * or more. A stretch too short for that gets one cut, at most a third of its length.
 */
export function perforate(points: readonly Point[], perforation: Perforation): Segment[] {
  return points.slice(1).flatMap((to, index) => dashes(points[index] ?? to, to, perforation));
}

function dashes(from: Point, to: Point, { cut, tie }: Perforation): Segment[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const count = Math.floor((length - 2 * Math.max(tie, endTie) + tie) / (cut + tie));
  if (count < 1) return [centred(from, to, Math.min(cut / length, 1 / 3))];
  const start = (length - count * cut - (count - 1) * tie) / 2;
  return Array.from({ length: count }, (_, index) => {
    const begin = start + index * (cut + tie);
    return between(from, to, begin / length, (begin + cut) / length);
  });
}

const centred = (from: Point, to: Point, share: number): Segment =>
  between(from, to, (1 - share) / 2, (1 + share) / 2);

const between = (from: Point, to: Point, start: number, end: number): Segment => [
  along(from, to, start),
  along(from, to, end),
];

/** The point at a share of the way. */
export const along = (from: Point, to: Point, share: number): Point => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
});
