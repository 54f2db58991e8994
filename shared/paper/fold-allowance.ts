import type { Nm } from '../lengths/nanometres.ts';

/**
 * Share of the caliper that a fold takes from the panel that ends there. Between the models of a mid-plane
 * arc (−0.2) and a flattened square fold (1); common practice, to be measured with a calibration strip.
 */
export const usualFoldFactor = 0.5;

/** What folds take from panels, in nanometres. */
export interface FoldAllowance {
  /** Loss at one end of a panel. */
  readonly perEnd: Nm;
  /** The part of it that the solver reckons with: all of it, or nothing where the grid is too coarse. */
  readonly entered: Nm;
}

/**
 * The fold allowance of a sheet. It enters the plan where the loss at both ends of a panel is more than half
 * a grid step; snapping swallows anything less.
 * @param grid step in nanometres; 0 for none
 */
export function allowanceIn(
  { paper, foldFactor }: { readonly paper: { readonly caliper: Nm }; readonly foldFactor: number },
  grid: Nm,
): FoldAllowance {
  const perEnd = Math.round(foldFactor * paper.caliper);
  return { perEnd, entered: Math.abs(2 * perEnd) > grid / 2 ? perEnd : 0 };
}

/**
 * The factor from a calibration strip that was folded to and fro along all of its scores and pressed.
 * @param drawn length of the strip as cut, in nanometres
 * @param measured sum of the folded panels' lengths, edge to edge
 * @param scores how many folds it has; each meets two panel ends
 * @returns (drawn − measured) / (2 · scores · caliper)
 */
export const foldFactorFrom = (strip: {
  readonly drawn: Nm;
  readonly measured: Nm;
  readonly scores: number;
  readonly caliper: Nm;
}): number => (strip.drawn - strip.measured) / (2 * strip.scores * strip.caliper);
