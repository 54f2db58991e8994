import type { Control, Steps } from './control.ts';
import { firstPlans } from './first-plans.ts';
import type { Job } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { masterProgram, planOf } from './master.ts';
import { merged, type Pattern, type Plan } from './plan.ts';
import { backFrom, jobWith } from './sub-job.ts';

/**
 * A plan from a linear program's: each pattern as often as that says, rounded down, and what is left over placed anew.
 * @returns undefined where the program has no solution
 */
export function* roundedDown(
  job: Job,
  patterns: readonly Pattern[],
  solve: SolveLinear,
  control: Control,
): Steps<Plan | undefined> {
  const solution = solve(masterProgram(job, patterns, undefined));
  if (solution === undefined) return undefined;
  const whole = planOf(
    job,
    patterns,
    solution.values.map((times) => Math.floor(times + 1e-6)),
  );
  if (whole.left.every((count) => count === 0)) return whole;
  const stock = new Map(job.stock);
  for (const { room, times } of whole.patterns) {
    const sheet = job.rooms[room]?.sheet ?? -1;
    stock.set(sheet, (stock.get(sheet) ?? 0) - times);
  }
  const part = jobWith(job, whole.left);
  const rest: Job = {
    ...part.job,
    boxes: part.job.boxes.map((box, index) => ({ ...box, count: part.counts[index] ?? 0 })),
    stock,
  };
  const { sheets } = control;
  const { best } = yield* firstPlans(rest, control);
  control.sheets = sheets;
  const { patterns: placed, left } = backFrom(part, best, job.boxes.length);
  return { patterns: merged([...whole.patterns, ...placed]), left };
}
