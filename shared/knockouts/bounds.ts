import type { Bounds } from '../geometry/bounds.ts';

/** Bounds that reach further by a distance on every side. */
export const grownBounds = ({ left, top, right, bottom }: Bounds, by: number): Bounds => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});
