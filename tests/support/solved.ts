import type { Plan } from '../../shared/solver/plan.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';

const spec = (raw: object) => folderSpec.parse(raw);

/** The plan for a spec as users write it; fails the test when there is none. */
function plan(raw: object): Plan {
  const solution = solveFolder(spec(raw));
  if (!solution.ok) throw new Error('the spec cannot be folded');
  return solution.plan;
}

export const solved = Object.assign(plan, { spec });
