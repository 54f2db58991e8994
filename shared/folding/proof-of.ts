import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { unfold } from '../creases/unfold.ts';
import type { Plan } from '../solver/plan.ts';
import { stackOf } from '../solver/stack-of.ts';
import { styleOf } from '../styles/registry.ts';
import { type Promised, type Proof, prove } from './prove.ts';

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
  return { plan, program, pattern, proof: prove(pattern, program, promisedBy(plan)) };
}

/** What a plan promises of its folded form. */
export function promisedBy(plan: Plan): Promised {
  const { spec, dimensions, arrangement } = plan;
  const style = styleOf(spec);
  return {
    flat: style.flat(dimensions),
    pockets: style.pockets,
    spine: style.spine(dimensions),
    stack: stackOf(plan),
    caliper: arrangement.sheet.paper.caliper,
  };
}
