import type { Line, Point } from '../geometry/plane.ts';
import type { Lock } from './lock.ts';

/**
 * A named part of the blank, in nanometres; every face of the crease pattern lies in one. It is the upright rectangle
 * between its sides, or the pieces within it.
 */
export interface Panel {
  readonly name: string;
  /** What people call it within a sentence; its name where there is nothing better. */
  readonly title?: string;
  /** A word or two to be written on it, the same on panels that people take for one part; else its name. */
  readonly label?: string;
  /** The label for several such panels, where they are parts of their own and not pieces of one. */
  readonly labels?: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Its convex pieces, clockwise as seen, where it is no rectangle or the blank is not convex. */
  readonly pieces?: readonly (readonly Point[])[];
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
  /** The panels that move, where not everything beyond the line does. */
  readonly only?: readonly string[];
  /** Bent to make the crease and laid flat again; a later step sets it up. */
  readonly eased?: boolean;
  /** Degrees at which the picture of the half open piece shows it; default as it is in the end. */
  readonly ajar?: number;
}

/** Creases that were folded before, eased or flat, are set to a right angle, and so they stay. */
export interface StandStep {
  readonly kind: 'stand';
  readonly name: string;
  /** Names of the folds. */
  readonly folds: readonly string[];
  /** What to do, as a sentence. */
  readonly task: string;
}

/** Layers that are slipped past others without a fold: all of one panel goes directly above or below another. */
export interface TuckStep {
  readonly kind: 'tuck';
  readonly name: string;
  readonly panel: string;
  readonly to: 'above' | 'below';
  readonly of: string;
}

/** A strip of tape or a line of glue: a rectangle of the open sheet, in nanometres, inside face up. */
export interface GlueStrip {
  readonly panel: string;
  /** The side of the paper that it lies on. */
  readonly face: 'inside' | 'outside';
  /** The panel that it sticks to; the same one where a corner is stuck to the rest of its panel. */
  readonly to: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Two layers that lie on each other by then are glued together. The sheet stays as it lies. */
export interface GlueStep {
  readonly kind: 'glue';
  readonly name: string;
  /** What is glued down, in a word: `hems`. */
  readonly holds: string;
  readonly strips: readonly GlueStrip[];
  /** Nanometres across a strip. */
  readonly width: number;
  /** Nanometres by which the strips stay inside the edges that they hold. */
  readonly inset: number;
  /** Strips beside each other along each edge. */
  readonly lines: number;
  /** A sentence on what must stay free of glue. */
  readonly keepFree?: string;
}

/** Tongues are pushed through slots, out of the side on which their tabs lie, and hold without glue. */
export interface LockStep {
  readonly kind: 'lock';
  readonly name: string;
  /** What is held, in a word or two: `pockets`. */
  readonly holds: string;
  readonly locks: readonly Lock[];
}

/** The contents slide into pockets. The sheet stays as it lies. */
export interface FillStep {
  readonly kind: 'fill';
  readonly name: string;
  /** Names of the pockets. */
  readonly pockets: readonly string[];
  /** What to do, as a sentence in which `{sets}` stands for what goes in; default: slide it through the mouths. */
  readonly task?: string;
}

export type Step = FoldStep | TuckStep | GlueStep | LockStep | FillStep | StandStep;

/**
 * Whether a step moves any paper. Glue and contents do not: how the sheet lies after them is how it lay before,
 * and nothing is to be folded for them.
 */
export const movesPaper = (step: Step): step is FoldStep | TuckStep | LockStep | StandStep =>
  step.kind !== 'glue' && step.kind !== 'fill';

/**
 * How a blank is folded: its outline, its panels and its steps in order. No crease letter is written here:
 * which way each layer bends follows from the folds before it.
 */
export interface FoldProgram {
  /** Corners of the blank in order; a convex polygon unless the panels have pieces. */
  readonly outline: readonly Point[];
  readonly panels: readonly Panel[];
  readonly steps: readonly Step[];
}

/** Every lock of a program. */
export const locksOf = ({ steps }: Pick<FoldProgram, 'steps'>): readonly Lock[] =>
  steps.flatMap((step) => (step.kind === 'lock' ? step.locks : []));
