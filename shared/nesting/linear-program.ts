/** What to make smallest: a sum over variables that are all at least 0, under rows of sums. */
export interface LinearProgram {
  readonly costs: readonly number[];
  readonly rows: readonly LinearRow[];
  /** Whether every variable must be whole. */
  readonly whole: boolean;
  /** Nodes of the search for whole values; not a time, so that the answer is always the same. */
  readonly maxNodes?: number;
}

/** A sum of shares of variables, at least or at most a limit. */
export interface LinearRow {
  readonly terms: readonly (readonly [variable: number, factor: number])[];
  readonly kind: 'at least' | 'at most';
  readonly limit: number;
}

export interface LinearSolution {
  /** Whether it is proved to be the best. */
  readonly optimal: boolean;
  readonly objective: number;
  readonly values: readonly number[];
  /** By row, how much the objective changes with the limit; only where variables need not be whole. */
  readonly duals: readonly number[];
}

/** @returns undefined where no values keep to the rows, or none were found */
export type SolveLinear = (program: LinearProgram) => LinearSolution | undefined;
