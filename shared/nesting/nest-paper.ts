import { byPatterns } from './by-patterns.ts';
import { type Control, goesOn, type Steps, spend } from './control.ts';
import { firstPlans } from './first-plans.ts';
import { improve } from './improve.ts';
import type { Job } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { comparePlans, fillOf, type Pattern, type Plan, sheetsOf } from './plan.ts';
import { randomFrom } from './random.ts';
import { sheetBound } from './sheet-bound.ts';
import { onSmallerSheets, tidied } from './tidy.ts';

/** More kinds of boxes than this are planned without linear programs. */
const mostKindsForPatterns = 60;

/** Of the evaluations left, what the search gets before the cutting patterns, and what those get. */
const firstShare = 0.1;
const patternShare = 0.6;

/** Sheets that are tidied, since each costs. */
const mostTidied = 30;

/**
 * Nests the boxes of one paper: many ways of filling sheet by sheet; bounds; where they disagree, cutting patterns with
 * linear programs; where they still disagree, a search by ruin and recreate.
 */
export function* nestPaper(
  job: Job,
  seed: number,
  control: Control,
  solve: SolveLinear | undefined,
): Steps<Plan> {
  if (job.boxes.length === 0) return { patterns: [], left: [] };
  control.bound = sheetBound(job);
  const started = yield* firstPlans(job, control);
  let best = started.best;
  const sizes = new Set(job.rooms.map(({ area }) => area)).size;
  const placesAll = (plan: Plan) => plan.left.every((count) => count === 0);
  const enough = (plan: Plan) => placesAll(plan) && sheetsOf(plan) <= control.bound;
  const better = (plan: Plan) => {
    if (comparePlans(job, plan, best) < 0) best = plan;
    control.sheets = sheetsOf(best);
  };

  const whole = control.limit;
  const stage = (share: number) => {
    control.limit = Math.min(whole, control.evaluations + share * Math.max(0, whole - control.evaluations));
  };
  const random = randomFrom(seed);
  stage(firstShare);
  better(yield* improve(job, best, random, control, enough));
  if (
    solve !== undefined &&
    placesAll(best) &&
    job.boxes.length <= mostKindsForPatterns &&
    (sizes > 1 || !enough(best))
  ) {
    stage(patternShare);
    if (goesOn(control)) better(yield* byPatterns(job, started.patterns, best, solve, control));
  }
  stage(1);
  better(yield* improve(job, best, random, control, enough));
  better({ ...best, patterns: onSmallerSheets(job, best.patterns) });
  return yield* tidyAll(job, best, control);
}

/** The emptiest layouts first, where most is to be gained. */
function* tidyAll(job: Job, plan: Plan, control: Control): Steps<Plan> {
  const patterns = plan.patterns.toSorted((one, other) => fillOf(job, one) - fillOf(job, other));
  for (let index = 0; index < Math.min(patterns.length, mostTidied) && control.stop === undefined; index++) {
    patterns[index] = tidied(job, patterns[index] as Pattern);
    yield* spend(control, 2);
  }
  return { ...plan, patterns: patterns.toReversed() };
}
