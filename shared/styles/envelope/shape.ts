import { mm, type Nm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, f, H, s, W } from './dimensions.ts';

/** How the flaps are shaped; common practice. */
export const shape = Object.freeze({
  /** Side flaps begin this far from the folds above and below them. */
  sideInset: mm(2),
  /** What square side flaps taper by at each end, the back and the closing flap at each side. */
  sideTaper: mm(4),
  backTaper: mm(2),
  flapTaper: mm(5),
  /** Pointed flaps have their points cut off, as a share of what they hang on. */
  point: 0.2,
});

type Corner = readonly [number, number];

/** Where the front lies on the blank. */
export interface Front {
  readonly left: Nm;
  readonly right: Nm;
  readonly top: Nm;
  readonly bottom: Nm;
}

export const frontOf = (d: Dimensions): Front => ({
  left: at(d, s),
  right: at(d, s) + at(d, W),
  top: at(d, f),
  bottom: at(d, f) + at(d, H),
});

/** A side flap's corners: from the front's edge at `x` out to its free edge, from the top down. */
export function sideFlap(
  front: Front,
  side: 'left' | 'right',
  depth: Nm,
  pointed: boolean,
): readonly Corner[] {
  const [x, out] = side === 'left' ? [front.left, front.left - depth] : [front.right, front.right + depth];
  const [top, bottom] = [front.top + shape.sideInset, front.bottom - shape.sideInset];
  const [from, to] = pointed
    ? middlePart(front.top, front.bottom)
    : ([top + shape.sideTaper, bottom - shape.sideTaper] as const);
  return [
    [x, top],
    [x, bottom],
    [out, to],
    [out, from],
  ];
}

/** The corners of the back or of the closing flap: the front's edge at `from`, the free edge at `to`. */
export function levelFlap(
  { left, right }: Front,
  from: Nm,
  to: Nm,
  taper: Nm,
  pointed: boolean,
): readonly Corner[] {
  const [start, end] = pointed ? middlePart(left, right) : ([left + taper, right - taper] as const);
  return [
    [left, from],
    [right, from],
    [end, to],
    [start, to],
  ];
}

/** The stretch in the middle where a point is cut off. */
export function middlePart(from: Nm, to: Nm): readonly [Nm, Nm] {
  const half = Math.round(((to - from) * shape.point) / 2);
  const middle = Math.round((from + to) / 2);
  return [middle - half, middle + half];
}

export const backEnd = (d: Dimensions): Nm => at(d, f) + at(d, H) + at(d, b);
