import type { Plan } from '../../shared/solver/plan.ts';
import type { TwinSleeveSpec } from '../../shared/styles/twin-sleeve/spec.ts';

/** The spec of a plan that is known to be of a twin sleeve. */
export function sleeveSpec({ spec }: Pick<Plan, 'spec'>): TwinSleeveSpec {
  if (spec.style !== 'twin-sleeve') throw new Error(`a ${spec.style} is no twin sleeve`);
  return spec;
}
