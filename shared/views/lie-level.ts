import type { Isometry } from '../geometry/plane.ts';

/** Entries of a motion's matrix may differ by this much from rounding. */
const sameEntry = 1e-6;
/** Nanometres. */
const samePlace = 2;

/** Whether one motion took two faces where they lie, so that the crease between them is still flat. */
export const lieLevel = (one: Isometry, other: Isometry): boolean =>
  (['a', 'b', 'c', 'd'] as const).every((entry) => Math.abs(one[entry] - other[entry]) < sameEntry) &&
  Math.hypot(one.tx - other.tx, one.ty - other.ty) < samePlace;
