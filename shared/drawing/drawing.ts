import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';

/** One straight score. */
export interface Score {
  /** Name of the fold, then a number where one fold needs several lines. */
  readonly id: string;
  /** Both ends, and in between every point where another score meets this one; all on one line, in nanometres. */
  readonly points: readonly Point[];
  /** Whether the first and the last point lie on the paper's edge. */
  readonly atEdge: readonly [boolean, boolean];
}

/** One piece that comes off: its closed contours in the order in which they are cut, in nanometres. */
export interface Cut {
  readonly id: string;
  readonly contours: readonly Contour[];
}

/** What a zone of the guide shows: a strip of glue, paper that it meets, or the lines that it must not leave. */
export type GuideKind = 'glue' | 'bare' | 'keepOut';

/** One zone of the guide, which is never cut: its outline on the open blank, in nanometres. */
export interface GuideZone {
  readonly id: string;
  readonly kind: GuideKind;
  /** The side of the paper that it is on. */
  readonly face: 'inside' | 'outside';
  readonly contours: readonly Contour[];
}

/**
 * Everything that a machine could do to the blank, in nanometres from the blank's top left corner with the
 * inside face up, before any convention.
 */
export interface Drawing {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly valleys: readonly Score[];
  readonly mountains: readonly Score[];
  /** In cutting order; a piece with something standing in it has that cut first. */
  readonly knockouts: readonly Cut[];
  /** The whole outline of the blank. */
  readonly outline: Cut;
  /** What must come off where the sheet's own edges serve as the outline; empty where they are all of it. */
  readonly offcuts: readonly Cut[];
  /** Where it is glued; absent where the convention does not ask for it. */
  readonly guide?: readonly GuideZone[];
  /** The sheet's edges are the blank's. */
  readonly wholeSheet: boolean;
  /** The drawing is to be turned a quarter clockwise, to lie as the sheet lies. */
  readonly turned: boolean;
}
