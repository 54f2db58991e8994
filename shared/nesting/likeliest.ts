import type { Job } from './job.ts';
import type { SolveLinear } from './linear-program.ts';
import { masterProgram } from './master.ts';
import { countsOf, type Pattern } from './plan.ts';

/** Of so many patterns a whole-number program is soon solved; more for jobs of many kinds. */
const least = 100;
const perKind = 4;

/**
 * The patterns that a plan in whole numbers is likely to use: those that cost least beyond what their boxes are worth in the
 * linear program. All of them, where they are few.
 */
export function likeliest(job: Job, patterns: readonly Pattern[], solve: SolveLinear): readonly Pattern[] {
  const most = Math.max(least, perKind * job.boxes.length);
  if (patterns.length <= most) return patterns;
  const solution = solve(masterProgram(job, patterns, undefined));
  if (solution === undefined) return patterns.slice(0, most);
  const worth = ({ spots }: Pattern) =>
    countsOf(spots, job.boxes.length).reduce(
      (sum, count, box) => sum + count * (solution.duals[box] ?? 0),
      0,
    );
  return patterns
    .map((pattern) => ({ pattern, worth: worth(pattern) }))
    .sort((one, other) => other.worth - one.worth)
    .slice(0, most)
    .map(({ pattern }) => pattern);
}
