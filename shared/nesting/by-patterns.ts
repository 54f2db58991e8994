import { allPatterns } from './all-patterns.ts';
import { areaOf } from './box.ts';
import { type Control, goesOn, nodesLeft, paid, type Steps, spend } from './control.ts';
import { type FitOracle, fitOracle } from './fit-oracle.ts';
import { generatePatterns } from './generate-patterns.ts';
import type { Job } from './job.ts';
import { likeliest } from './likeliest.ts';
import type { SolveLinear } from './linear-program.ts';
import { masterProgram, planOf } from './master.ts';
import { comparePlans, fillOf, type Pattern, type Plan, patternKey, sheetsOf } from './plan.ts';
import { roundedDown } from './rounded-down.ts';

/** All choices of boxes are listed only where so many of the smallest fill a sheet at most. */
const mostCopiesToList = 30;

const listing = { maxChoices: 2000, nodesPerChoice: 20_000 };

/** Branches of a whole-number program: no step of a search may take long, but a proof is worth more. */
const wholeNodes = { likeliest: 100, all: 400 };

/** With more kinds than this, branching takes long and finds less than rounding down. */
const mostKindsToBranch = 24;

/** Patterns to begin with, beside the plan's own; more for jobs of many kinds. */
const leastStart = 60;

/** Some layouts to begin with, the best filled ones: too many only make the programs slow. */
const fullest = (job: Job, patterns: readonly Pattern[]): readonly Pattern[] =>
  [...new Map(patterns.map((pattern) => [patternKey(pattern), pattern])).values()]
    .sort((one, other) => fillOf(job, other) - fillOf(job, one))
    .slice(0, Math.max(leastStart, 2 * job.boxes.length));

/**
 * The best whole numbers of patterns: of those that prices bring up soon; where that is not proved to be the best, of all
 * patterns, if they can be listed, or of those that longer searches bring up.
 */
export function* byPatterns(
  job: Job,
  start: readonly Pattern[],
  known: Plan,
  solve: SolveLinear,
  control: Control,
): Steps<Plan> {
  const oracles = job.rooms.map(({ width, height }) => fitOracle(job.boxes, width, height));
  let best = known;
  /** @returns whether the plan is the best of these patterns */
  const wholePlan = function* (patterns: readonly Pattern[], maxNodes: number): Steps<boolean> {
    const whole = solve(masterProgram(job, patterns, { maxNodes, mostSheets: sheetsOf(known) }));
    if (whole !== undefined) {
      const plan = planOf(job, patterns, whole.values);
      if (comparePlans(job, plan, best) < 0) best = plan;
    }
    yield* spend(control, 1);
    return whole?.optimal ?? false;
  };
  const likelyPlan = function* (pool: readonly Pattern[]): Steps<void> {
    if (job.boxes.length <= mostKindsToBranch)
      yield* wholePlan([...best.patterns, ...likeliest(job, pool, solve)], wholeNodes.likeliest);
    if (enough()) return;
    const plan = yield* roundedDown(job, pool, solve, control);
    if (plan !== undefined && comparePlans(job, plan, best) < 0) best = plan;
  };
  const enough = () => sheetsOf(best) <= control.bound || !goesOn(control);

  const soon = yield* generatePatterns(
    job,
    [...known.patterns, ...fullest(job, start)],
    solve,
    control,
    oracles,
    false,
  );
  yield* likelyPlan(soon);
  if (enough()) return best;
  const listed = yield* listAll(job, oracles, control);
  if (listed.complete) {
    if (yield* wholePlan(listed.patterns, wholeNodes.all))
      control.bound = Math.max(control.bound, sheetsOf(best));
    return best;
  }
  const pool = [...soon, ...listed.patterns];
  yield* likelyPlan(yield* generatePatterns(job, pool, solve, control, oracles, true));
  return best;
}

/** All patterns where they are few, otherwise some or none. */
function* listAll(
  job: Job,
  oracles: readonly FitOracle[],
  control: Control,
): Steps<{ readonly patterns: readonly Pattern[]; readonly complete: boolean }> {
  const smallest = Math.min(...job.boxes.map(areaOf));
  const copies = job.boxes.reduce((sum, { count }) => sum + count, 0);
  const patterns: Pattern[] = [];
  for (let room = 0; room < job.rooms.length; room++) {
    if (Math.min(copies, (job.rooms[room]?.area ?? 0) / smallest) > mostCopiesToList)
      return { patterns, complete: false };
    const limits = { ...listing, maxNodes: nodesLeft(control) / 2 };
    const listed = yield* paid(control, allPatterns(job, room, oracles[room] as FitOracle, limits));
    patterns.push(...listed.patterns);
    if (!goesOn(control) || !listed.complete) return { patterns, complete: false };
  }
  return { patterns, complete: true };
}
