import { patternOf } from '../../shared/creases/pattern-of.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { fittingsOf } from '../../shared/solver/fits.ts';
import type { PlanReply } from '../../shared/solver/plan-reply.ts';
import { showPlan } from '../../shared/solver/show-plan.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { solveOrRefuse } from './solve-or-refuse.ts';

/**
 * The plan for a spec with its reasons, slack, warnings and alternatives.
 * @throws CannotBeFolded
 */
export function planFolder(spec: FolderSpec): PlanReply {
  const plan = solveOrRefuse(spec);
  return showPlan(plan, {
    pattern: patternOf(plan),
    alternatives: alternativesTo(plan),
    fittings: spec.contents === undefined ? fittingsOf(plan) : undefined,
  });
}
