import { areaOf, type Box } from './box.ts';
import { construct, type Preference, type Way } from './construct.ts';
import { type Control, type Steps, spend } from './control.ts';
import { rules, sizeKeys } from './fill-by-order.ts';
import type { Job } from './job.ts';
import { comparePlans, type Pattern, type Plan, sheetsOf } from './plan.ts';

/** Where many boxes wait, only so many ways are tried first. */
const quickWays = 6;
const manyKinds = 1500;
const mostForOrder = 400;

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

/** Plans by many ways of filling sheet by sheet: the best one, and every layout that came up. */
export function* firstPlans(
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
