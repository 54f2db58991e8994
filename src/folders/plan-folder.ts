import type { PlanReply } from '../../shared/plan-reply/plan-reply.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { fittingsOf } from '../../shared/solver/fits.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';

/**
 * The plan for a spec with its proof, reasons, slack, warnings and alternatives.
 * @throws CannotBeFolded
 */
export function planFolder(spec: FolderSpec): PlanReply {
  const folded = foldOrRefuse(spec);
  return showPlan(folded, {
    alternatives: alternativesTo(folded.plan),
    fittings: spec.contents === undefined ? fittingsOf(folded.plan) : undefined,
  });
}
