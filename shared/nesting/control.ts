import type { NestProgress } from './nesting.ts';

export type StopRequest = 'time limit' | 'cancelled';

/**
 * A computation in small steps: after each it says how far it is, and is told by `next` whether to stop. It then still
 * returns the best it has. The caller may look at a clock; the computation never does.
 */
export type Steps<Result> = Generator<NestProgress, Result, StopRequest | undefined>;

/** How far the search for one paper has come, and how far it may go. */
export interface Control {
  readonly paper: string;
  /** Evaluations it may have spent by the end of the stage it is in. */
  limit: number;
  evaluations: number;
  sheets: number;
  bound: number;
  stop?: StopRequest;
}

export const goesOn = ({ stop, evaluations, limit }: Control): boolean =>
  stop === undefined && evaluations < limit;

/** Positions of an exact search that cost as much as filling one sheet. */
const nodesPerEvaluation = 100;

/** Positions that may still be looked at. */
export const nodesLeft = ({ limit, evaluations }: Control): number =>
  Math.max(0, limit - evaluations) * nodesPerEvaluation;

const evaluationsOf = (nodes: number): number => nodes / nodesPerEvaluation;

/** Books what a step cost. @returns whether the search goes on */
export function* spend(control: Control, evaluations: number): Steps<boolean> {
  control.evaluations += evaluations;
  const { paper, sheets, bound } = control;
  const request = yield { paper, sheets, bound, evaluations: Math.round(control.evaluations) };
  if (request !== undefined) control.stop = request;
  return goesOn(control);
}

/** An exact search in steps: each yields the positions looked at since the last, and is told whether to go on. */
export type Trial<Result> = Generator<number, Result, boolean>;

/** Runs a search as part of a computation, which pays for its positions. */
export function* paid<Result>(control: Control, trial: Trial<Result>): Steps<Result> {
  let open = true;
  for (;;) {
    const step = trial.next(open);
    if (step.done === true) return step.value;
    open = yield* spend(control, evaluationsOf(step.value));
  }
}

/** Runs a search to its end. */
export function finished<Result>(trial: Trial<Result>): Result {
  for (;;) {
    const step = trial.next(true);
    if (step.done === true) return step.value;
  }
}
