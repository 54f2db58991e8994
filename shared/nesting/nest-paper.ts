import { allPatterns } from './all-patterns.ts';
import { areaOf, type Box } from './box.ts';
import { construct, type Preference, type Way } from './construct.ts';
import { type Control, goesOn, nodesLeft, paid, type Steps, spend } from './control.ts';
import { rules, sizeKeys } from './fill-by-order.ts';
import { type FitOracle, fitOracle } from './fit-oracle.ts';
import { generatePatterns } from './generate-patterns.ts';
import { improve } from './improve.ts';
import type { Job } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { masterProgram, planOf } from './master.ts';
import { comparePlans, fillOf, type Pattern, type Plan, sheetsOf } from './plan.ts';
import { randomFrom } from './random.ts';
import { sheetBound } from './sheet-bound.ts';
import { onSmallerSheets, tidied } from './tidy.ts';

/** More kinds of boxes than this are planned without linear programs. */
const mostKindsForPatterns = 60;

/** All choices of boxes are listed only where so many of the smallest fill a sheet at most. */
const mostCopiesToList = 30;

const listing = { maxChoices: 2000, nodesPerChoice: 20_000 };
const wholeNodes = 400;

/** Of the evaluations left, what the search gets before the cutting patterns, and what those get. */
const firstShare = 0.1;
const patternShare = 0.6;

/** Where many boxes wait, only so many ways are tried first. */
const quickWays = 6;
const mostTidied = 30;
const manyKinds = 1500;
const mostForOrder = 400;

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
    const patterns = [...started.patterns, ...best.patterns];
    if (goesOn(control)) better(yield* byPatterns(job, patterns, best, solve, control));
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

const ways: readonly Way[] = [
  ...Object.values(sizeKeys).flatMap((key) =>
    Object.values(rules).map((rule): Way => ({ by: 'order', key, rule })),
  ),
  ...[areaOf, ({ height }: Box) => height, ({ width, height }: Box) => width + height].map(
    (rank): Way => ({ by: 'ledge', rank }),
  ),
  ...(['upright', 'turned'] as const).flatMap((pose): Way[] => [
    { by: 'order', key: sizeKeys.area, rule: rules.low, keep: () => pose },
    { by: 'ledge', rank: areaOf, keep: () => pose },
  ]),
];

/**
 * Filling by order keeps a list of free spaces, which costs too much for very many boxes on a sheet; with very many
 * kinds every way costs much.
 */
function waysFor(job: Job): readonly Way[] {
  const copies = job.boxes.reduce((sum, { count }) => sum + count, 0);
  const mean = job.boxes.reduce((sum, box) => sum + box.count * areaOf(box), 0) / copies;
  const perSheet = Math.min(copies, Math.max(...job.rooms.map(({ area }) => area)) / mean);
  if (perSheet > mostForOrder) return ways.filter(({ by }) => by === 'ledge');
  return job.boxes.length > manyKinds ? ways.slice(0, quickWays) : ways;
}

function* firstPlans(
  job: Job,
  control: Control,
): Steps<{ readonly best: Plan; readonly patterns: readonly Pattern[] }> {
  const counts = job.boxes.map(({ count }) => count);
  const preferences: readonly Preference[] = job.rooms.length > 1 ? ['largest', 'fullest'] : ['largest'];
  const tried = waysFor(job);
  const patterns: Pattern[] = [];
  let best: Plan | undefined;
  for (const preference of preferences)
    for (const way of tried) {
      const { plan, evaluations } = construct(job, counts, job.stock, way, preference);
      patterns.push(...plan.patterns);
      if (best === undefined || comparePlans(job, plan, best) < 0) best = plan;
      control.sheets = sheetsOf(best);
      if (!(yield* spend(control, evaluations))) return { best, patterns };
    }
  return { best: best ?? { patterns: [], left: counts }, patterns };
}

/**
 * The best whole numbers of patterns: of those that prices bring up soon; where that is not proved to be the best, of all
 * patterns, if they can be listed, or of those that longer searches bring up.
 */
function* byPatterns(
  job: Job,
  start: readonly Pattern[],
  known: Plan,
  solve: SolveLinear,
  control: Control,
): Steps<Plan> {
  const oracles = job.rooms.map(({ width, height }) => fitOracle(job.boxes, width, height));
  let best = known;
  const wholePlan = function* (pool: readonly Pattern[]): Steps<boolean> {
    const whole = solve(masterProgram(job, pool, { maxNodes: wholeNodes, mostSheets: sheetsOf(known) }));
    if (whole !== undefined) {
      const plan = planOf(job, pool, whole.values);
      if (comparePlans(job, plan, best) < 0) best = plan;
    }
    yield* spend(control, 1);
    return whole?.optimal ?? false;
  };
  const enough = () => sheetsOf(best) <= control.bound || !goesOn(control);

  const soon = yield* generatePatterns(job, start, solve, control, oracles, false);
  yield* wholePlan(soon);
  if (enough()) return best;
  const listed = yield* listAll(job, oracles, control);
  if (listed.complete) {
    if (yield* wholePlan(listed.patterns)) control.bound = Math.max(control.bound, sheetsOf(best));
    return best;
  }
  const pool = [...soon, ...listed.patterns];
  yield* wholePlan(yield* generatePatterns(job, pool, solve, control, oracles, true));
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
