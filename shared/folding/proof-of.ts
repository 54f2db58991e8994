import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { unfold } from '../creases/unfold.ts';
import { openSlots } from '../knockouts/open-slots.ts';
import type { Knockouts } from '../knockouts/placed.ts';
import type { Plan } from '../solver/plan.ts';
import { stackOf } from '../solver/stack-of.ts';
import { pocketsOf } from '../styles/pockets-of.ts';
import { styleOf } from '../styles/registry.ts';
import { type Promised, type Proof, prove } from './prove.ts';

/** A plan with its crease pattern, the steps that fold it, and the proof that they do. */
export interface Folded {
  readonly plan: Plan;
  readonly program: FoldProgram;
  readonly pattern: CreasePattern;
  readonly proof: Proof;
  /** What is cut out of it, the slots of its locks among it; absent where nothing is. */
  readonly knockouts?: Knockouts;
}

/** Folds a plan and proves that it becomes what the plan promises. */
export function proofOf(plan: Plan): Folded {
  const style = styleOf(plan.spec);
  const program = style.program(plan.spec, plan.dimensions, plan.arrangement.sheet.paper.caliper);
  const pattern = unfold(program);
  const slots = openSlots(pattern, program);
  return {
    plan,
    program,
    pattern,
    proof: prove(pattern, program, promisedBy(plan)),
    ...(slots ? { knockouts: slots } : {}),
  };
}

/** An item as it stands in its pocket. */
const standing = ({ width, height }: { readonly width: number; readonly height: number }, turned: boolean) =>
  turned ? { width: height, height: width } : { width, height };

/** What a plan promises of its folded form. */
export function promisedBy(plan: Plan): Promised {
  const { spec, dimensions, arrangement, load } = plan;
  const style = styleOf(spec);
  const { width, height, depth } = style.closed(dimensions, spec);
  return {
    flat: style.flat(dimensions, spec),
    ...(depth === undefined ? {} : { closed: { face: style.face, width, height, depth } }),
    pockets: pocketsOf(plan),
    ...(load ? { item: standing(load.item, arrangement.itemTurned) } : {}),
    layers: style.layers,
    stack: stackOf(plan),
    caliper: arrangement.sheet.paper.caliper,
  };
}
