import { areaOf } from './box.ts';
import { construct, type Way } from './construct.ts';
import { type Control, goesOn, type Steps, spend } from './control.ts';
import { rules, sizeKeys } from './fill-by-order.ts';
import type { Job } from './job.ts';
import { fillOf, leftArea, merged, type Pattern, type Plan, sheetArea, sheetsOf } from './plan.ts';
import type { Random } from './random.ts';
import { backFrom, jobWith } from './sub-job.ts';

/** A sheet of a plan by itself. */
type Single = Omit<Pattern, 'times'>;

/**
 * Ruin and recreate: takes two to four sheets apart, an ill-filled one among them, and fills sheets anew with their
 * boxes and what is left over, in an order changed by chance; keeps what is no worse. Full sheets beside an ill-filled one
 * count as better than evenly filled ones, since that is how a sheet comes to be saved.
 * Source: Schrimpf et al., "Record breaking optimization results using the ruin and recreate principle", J. Comput.
 * Phys. 159 (2000) 139-171 (from memory).
 * @param enough whether a plan needs no improvement
 */
export function* improve(
  job: Job,
  start: Plan,
  random: Random,
  control: Control,
  enough: (plan: Plan) => boolean,
): Steps<Plan> {
  let best = start;
  for (let turn = 0; goesOn(control) && !enough(best); turn++) {
    const { singles, taken } = split(best, random, job);
    if (taken.length === 0) break;
    const step = rebuilt(job, taken, best, random);
    control.evaluations += step.evaluations;
    if (step.plan !== undefined) {
      best =
        step.plan.left.some((count) => count > 0) || singles.length > 0
          ? { patterns: merged([...singles, ...step.plan.patterns]), left: step.plan.left }
          : step.plan;
      control.sheets = sheetsOf(best);
    }
    if (turn % 4 === 3 && !(yield* spend(control, 0))) break;
  }
  return best;
}

/** The sheets to take apart, and the rest of the plan. */
function split(
  { patterns }: Plan,
  random: Random,
  job: Job,
): { singles: readonly Pattern[]; taken: readonly Single[] } {
  const left = patterns.map((pattern) => ({ ...pattern }));
  const taken: Single[] = [];
  const draw = (index: number) => {
    const pattern = left[index];
    if (pattern === undefined) return;
    taken.push({ room: pattern.room, spots: pattern.spots });
    if (pattern.times > 1) left[index] = { ...pattern, times: pattern.times - 1 };
    else left.splice(index, 1);
  };
  const fills = left.map((pattern) => fillOf(job, pattern));
  const emptiest = fills.indexOf(Math.min(...fills));
  draw(random.next() < 0.7 ? emptiest : random.below(left.length));
  for (let more = 1 + random.below(3); more > 0 && left.length > 0; more--) draw(random.below(left.length));
  return { singles: left, taken };
}

/** How well sheets are filled: unevenly is better. */
const unevenness = (job: Job, patterns: readonly Pattern[]): number =>
  patterns.reduce((sum, pattern) => sum + pattern.times * fillOf(job, pattern) ** 2, 0);

function rebuilt(job: Job, taken: readonly Single[], whole: Plan, random: Random) {
  const before: Plan = { patterns: taken.map((single) => ({ ...single, times: 1 })), left: whole.left };
  const counts = [...whole.left];
  for (const { spots } of taken) for (const { box } of spots) counts[box] = (counts[box] ?? 0) + 1;
  const stock = new Map(job.stock);
  const use = (sheet: number, times: number) => stock.set(sheet, (stock.get(sheet) ?? 0) - times);
  for (const { room, times } of whole.patterns) use(job.rooms[room]?.sheet ?? -1, times);
  for (const { room } of taken) use(job.rooms[room]?.sheet ?? -1, -1);

  const part = jobWith(job, counts);
  const { plan, evaluations } = construct(
    part.job,
    part.counts,
    stock,
    wayByChance(random),
    random.next() < 0.5 ? 'largest' : 'fullest',
  );
  const after = backFrom(part, plan, job.boxes.length);
  const worse =
    Math.sign(leftArea(job, after) - leftArea(job, before)) ||
    sheetsOf(after) - sheetsOf(before) ||
    Math.sign(sheetArea(job, after) - sheetArea(job, before)) ||
    unevenness(job, before.patterns) - unevenness(job, after.patterns);
  return worse <= 1e-12 ? { plan: after, evaluations } : { evaluations };
}

function wayByChance(random: Random): Way {
  const strength = [0, 0.2, 0.5, 1][random.below(4)] ?? 0;
  const stir = () => 1 + strength * (random.next() - 0.5);
  const keep = (['upright', 'turned', 'either', 'either'] as const)[random.below(4)] ?? 'either';
  const changing =
    random.next() < 0.5 ? { stir } : { stir, keep: () => (random.next() < 0.5 ? keep : 'either') };
  if (random.next() < 0.25) return { by: 'ledge', rank: areaOf, ...changing };
  const keys = Object.values(sizeKeys);
  const all = Object.values(rules);
  const key = keys[random.below(keys.length)] ?? sizeKeys.area;
  return { by: 'order', key, rule: all[random.below(all.length)] ?? rules.shortSide, ...changing };
}
