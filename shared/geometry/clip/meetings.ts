import type { Point64, ZCallback64 } from 'clipper2-ts';
import type { Corner, Source } from './source.ts';

/** Which sides meet at the points of a clipped polygon. */
export interface Meetings {
  /** To be called by the clipper at each crossing; it numbers the crossing in the point's `z`. */
  readonly note: ZCallback64;
  /** The sides that meet at a point, by the numbers of their first corners. */
  readonly sidesAt: (p: Point64) => readonly number[];
  /** The corner of a source that a point is, if it is one. */
  readonly cornerAt: (p: Point64) => Corner | undefined;
}

/** A record of the crossings in one run of the clipper. */
export function meetingsIn({ corners }: Source): Meetings {
  const crossings: (readonly number[])[] = [];

  const sideBetween = (one: Point64, other: Point64): readonly number[] => {
    const from = (one.z ?? 0) - 1;
    const to = (other.z ?? 0) - 1;
    if (corners[from]?.next === to) return [from];
    return corners[to]?.next === from ? [to] : [];
  };

  const sidesAt = ({ z = 0 }: Point64): readonly number[] => {
    if (z > corners.length) return crossings[z - corners.length - 1] ?? [];
    const corner = corners[z - 1];
    return corner ? [z - 1, corner.before] : [];
  };

  return {
    sidesAt,
    cornerAt: ({ z = 0 }) => corners[z - 1],
    note: (bottom1, top1, bottom2, top2, p) => {
      // where a corner lies on another side the clipper has already given its number
      const known = p.z ? sidesAt(p) : [];
      crossings.push([...sideBetween(bottom1, top1), ...sideBetween(bottom2, top2), ...known]);
      p.z = corners.length + crossings.length;
    },
  };
}
