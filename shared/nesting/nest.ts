import type { Control, Steps } from './control.ts';
import { type Job, jobsOf } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { nestByOutlines } from './nest-by-outlines.ts';
import { nestPaper } from './nest-paper.ts';
import { type NestInput, nestSpec } from './nest-spec.ts';
import type { Nesting } from './nesting.ts';
import { nestingOf, type PaperResult } from './nesting-of.ts';
import { placedPlan } from './placed-plan.ts';

/** Outlines cost more than boxes by evaluations alone. */
const mostForOutlines = 3000;

/**
 * Places pieces on the fewest sheets, then on the least paper, then with the fewest different layouts, so that what is left
 * over is in large rectangles. It runs in steps ({@link Steps}); {@link runToEnd} runs them all.
 * @param solve for linear programs; without it fewer plans are proved to be the best
 * @throws {ZodError} where the spec is not one
 */
export function* nest(input: NestInput, solve?: SolveLinear): Steps<Nesting> {
  const spec = nestSpec.parse(input);
  const results: PaperResult[] = [];
  let stop: Control['stop'];
  for (const job of jobsOf(spec)) {
    const control: Control = {
      paper: job.paper,
      limit: spec.evaluations,
      evaluations: 0,
      sheets: 0,
      bound: 0,
    };
    if (stop !== undefined) control.stop = stop;
    const irregular = job.pieceOf.some((piece) => spec.pieces[piece]?.outline !== undefined);
    if (irregular) control.limit = spec.evaluations / 2;
    let plan = placedPlan(spec, job, yield* nestPaper(job, spec.seed, control, solve));
    control.limit = Math.min(spec.evaluations, control.evaluations + mostForOutlines);
    if (irregular) {
      const boxes = (rest: Job, own: Control) => nestPaper(rest, spec.seed, own, solve);
      plan = yield* nestByOutlines(spec, job, plan, control, boxes);
    }
    stop = control.stop;
    results.push({ job, plan, control });
  }
  return nestingOf(spec, results);
}

/** Runs a computation in steps without looking at what it says on the way. */
export function runToEnd<Result>(steps: Steps<Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
