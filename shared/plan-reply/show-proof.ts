import type { Appearance } from '../folding/appearance.ts';
import type { Folded } from '../folding/proof-of.ts';
import { stacksOf } from '../folding/thickness.ts';
import { inMm, showLength } from '../lengths/show-length.ts';
import { allowanceIn } from '../paper/fold-allowance.ts';
import type { Plan } from '../solver/plan.ts';
import { stackOf } from '../solver/stack-of.ts';
import type { PlanReply } from './plan-reply.ts';

const roundArea = (area: number): number => Math.round(area * 10) / 10;

/** A proof that holds, as a reply gives it. */
export function showProof({ plan, proof }: Folded): PlanReply['proof'] {
  const { sheet } = plan.arrangement;
  const { caliper } = sheet.paper;
  const { perEnd } = allowanceIn(sheet, plan.grid);
  const contents = stackOf(plan);
  const { layers } = proof;
  return {
    holds: true,
    residual: Number(inMm(proof.residual).toFixed(9)),
    checks: proof.checks.map((check) => ({ ...check })),
    pockets: proof.pockets.map(({ name, width, height }) => ({
      name,
      width: showLength(width - 2 * perEnd),
      height: showLength(height - 2 * perEnd),
    })),
    closed: {
      ...(layers.atSpine === undefined ? {} : { layersAtSpine: layers.atSpine }),
      mostLayers: layers.most,
      ...(layers.atSpine === undefined
        ? {}
        : { thicknessAtSpine: showLength(layers.atSpine * caliper + contents) }),
      mostThickness: showLength(layers.most * caliper + contents),
    },
    stacks: stacksOf(proof.spots).map(({ layers, panels, area }) => ({
      layers,
      thickness: showLength(layers * caliper),
      panels: [...panels],
      area: roundArea(area),
    })),
  };
}

/** What can be seen, as a reply gives it. */
export const showAppearances = (appearances: readonly Appearance[]): PlanReply['regions'] =>
  appearances.map(({ view, regions }) => ({
    view,
    regions: regions.map((region) => ({ ...region, area: roundArea(region.area) })),
  }));

/** The fold allowance of a plan, and whether the solver reckoned with it. */
export function showAllowance({ arrangement: { sheet }, grid }: Plan): PlanReply['foldAllowance'] {
  const { perEnd, entered } = allowanceIn(sheet, grid);
  return {
    factor: sheet.foldFactor,
    perEnd: showLength(perEnd),
    entered: entered !== 0,
    why:
      entered === 0
        ? 'both ends of a panel together lose no more than half a grid step: the contents’ play pays for it'
        : 'both ends of a panel together lose more than half a grid step, so the pockets were made larger by it',
  };
}
