import type { Line, Point } from '../geometry/plane.ts';

/** A named rectangle of the blank, in nanometres; every face of the crease pattern lies in one. */
export interface Panel {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * One fold as a maker does it: along a line across the sheet as it lies by then, everything on one side of
 * the line moves. `toward` brings the moving side up over the sheet, seen with the inside face up at the
 * start; `away` turns it under.
 */
export interface FoldStep {
  readonly kind: 'fold';
  readonly name: string;
  readonly line: Line;
  /** Any point on the side that moves. */
  readonly moving: Point;
  readonly direction: 'toward' | 'away';
  /** 180 folds flat; 90 leaves the two sides at a right angle. */
  readonly angle: 180 | 90;
}

/** Layers that are slipped past others without a fold: all of one panel goes directly above or below another. */
export interface TuckStep {
  readonly kind: 'tuck';
  readonly name: string;
  readonly panel: string;
  readonly to: 'above' | 'below';
  readonly of: string;
}

export type Step = FoldStep | TuckStep;

/**
 * How a blank is folded: its outline, its panels and its steps in order. No crease letter is written here:
 * which way each layer bends follows from the folds before it.
 */
export interface FoldProgram {
  /** Corners of the blank in order, a convex polygon. */
  readonly outline: readonly Point[];
  readonly panels: readonly Panel[];
  readonly steps: readonly Step[];
}
