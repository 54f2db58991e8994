import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { PlanReply } from '../../shared/plan-reply/plan-reply.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import { alternativesTo } from '../../shared/solver/alternatives.ts';
import { fittingsOf } from '../../shared/solver/fits.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { cutOrRefuse } from './cut-or-refuse.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';
import { noFonts } from './fonts-for.ts';

/**
 * The plan for a spec with its proof, reasons, slack, warnings and alternatives.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 */
export function planFolder(spec: FolderSpec, fonts: FontShelf = noFonts): PlanReply {
  const folded = cutOrRefuse(foldOrRefuse(spec, fonts));
  return showPlan(folded, {
    alternatives: alternativesTo(folded.plan),
    fittings: spec.contents === undefined ? fittingsOf(folded.plan) : undefined,
  });
}
