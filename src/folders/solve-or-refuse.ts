import { showLength } from '../../shared/lengths/show-length.ts';
import { showRemedy } from '../../shared/plan-reply/show-plan.ts';
import type { Plan } from '../../shared/solver/plan.ts';
import { nearest, shortagesOf } from '../../shared/solver/refusal.ts';
import { remediesFor } from '../../shared/solver/remedies.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';

/**
 * The plan for a spec.
 * @throws CannotBeFolded with the bound, the shortfall and remedies that were tried
 */
export function solveOrRefuse(spec: FolderSpec): Plan {
  const solution = solveFolder(spec);
  if (solution.ok) return solution.plan;
  const misfit = nearest(solution.misfits);
  const shortages = shortagesOf(misfit, spec.measure);
  const remedies = remediesFor(spec, misfit).map(showRemedy);
  const worst = shortages.toSorted((one, other) => other.shortfall - one.shortfall)[0];
  const cheapest = remedies[0]?.message;
  throw new CannotBeFolded({
    message: worst?.message ?? 'no arrangement can be folded',
    errors: shortages.map(({ path, message }) => ({
      path,
      message,
      ...(cheapest === undefined ? {} : { remedy: cheapest }),
    })),
    bound: worst?.bound,
    shortfall: showLength(worst?.shortfall ?? 0),
    remedies,
  });
}
