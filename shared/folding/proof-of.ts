import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { unfold } from '../creases/unfold.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { type Proof, prove } from './prove.ts';

/** A plan with its crease pattern, the steps that fold it, and the proof that they do. */
export interface Folded {
  readonly plan: Plan;
  readonly program: FoldProgram;
  readonly pattern: CreasePattern;
  readonly proof: Proof;
}

/** Folds a plan and proves that it becomes what the plan promises. */
export function proofOf(plan: Plan): Folded {
  const style = styleOf(plan.spec);
  const program = style.program(plan.spec, plan.dimensions);
  const pattern = unfold(program);
  const promised = {
    flat: style.flat(plan.dimensions),
    pockets: style.pockets,
    layersAtSpine: style.layers,
  };
  return { plan, program, pattern, proof: prove(pattern, program, promised) };
}
