import type { Point } from './plane.ts';

/** A straight stretch, in nanometres, from where the one before it ended. */
export interface LineTo {
  readonly to: Point;
}

/** A cubic Bézier curve with both control points, in nanometres, from where the stretch before it ended. */
export interface CurveTo {
  readonly control: readonly [Point, Point];
  readonly to: Point;
}

export type Stretch = LineTo | CurveTo;

/** A closed line: the last stretch ends where the first began. It does not cross itself. */
export interface Contour {
  readonly start: Point;
  readonly stretches: readonly Stretch[];
}

/**
 * A plane figure, perhaps of several parts and with counters. Contours neither cross nor touch one another; outer ones run
 * clockwise as seen (y runs down), counters the other way, so that the even-odd and the nonzero rule agree.
 */
export type Shape = readonly Contour[];

export const isCurve = (stretch: Stretch): stretch is CurveTo => 'control' in stretch;
