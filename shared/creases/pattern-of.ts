import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import type { CreasePattern } from './crease-pattern.ts';
import { unfold } from './unfold.ts';

/** The crease pattern of a plan: its style's folds, made and opened again. */
export const patternOf = (plan: Plan): CreasePattern =>
  unfold(styleOf(plan.spec).program(plan.spec, plan.dimensions));
