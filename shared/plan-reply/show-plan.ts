import type { z } from 'zod';
import { type CreasePattern, isCrease } from '../creases/crease-pattern.ts';
import { scoreSideOf } from '../drawing/score-side.ts';
import { appearancesOf } from '../folding/appearance.ts';
import type { Folded } from '../folding/proof-of.ts';
import { type ShownLength, showLength } from '../lengths/show-length.ts';
import { slackOf } from '../solver/bounds.ts';
import { setsPerPocket } from '../solver/demand.ts';
import type { Fitting } from '../solver/fits.ts';
import type { Plan } from '../solver/plan.ts';
import type { Possibility } from '../solver/possible.ts';
import type { Remedy } from '../solver/remedies.ts';
import { stackOf } from '../solver/stack-of.ts';
import { styleOf } from '../styles/registry.ts';
import { cautions } from './cautions.ts';
import type { changeReply, PlanReply, possibleReply, remedyReply } from './plan-reply.ts';
import { showGlue } from './show-glue.ts';
import { showKnockouts, showPlaces } from './show-knockouts.ts';
import { showLocks } from './show-locks.ts';
import { showAllowance, showAppearances, showProof } from './show-proof.ts';
import { warningsOf } from './warnings.ts';

/** Everything around a plan that its reply tells. */
export interface PlanContext {
  readonly alternatives: readonly Remedy[];
  readonly fittings: readonly Fitting[] | undefined;
}

const extent = ({ width, height }: { width: number; height: number }) => ({
  width: showLength(width),
  height: showLength(height),
});

/** A plan as its reply gives it: every length in millimetres and inches. */
export function showPlan(folded: Folded, { alternatives, fittings }: PlanContext): PlanReply {
  const { plan, pattern, program } = folded;
  const { sheet, sheetTurned } = plan.arrangement;
  const appearances = appearancesOf(folded);
  const titles = new Map(styleOf(plan.spec).dimensionNames.map(({ name, title }) => [name, title]));
  return {
    style: plan.spec.style,
    sheet: {
      title: sheet.title,
      ...(sheet.size === undefined ? {} : { size: sheet.size }),
      ...extent(sheet),
      turned: sheetTurned,
      whole: plan.wholeSheet,
      caliper: showLength(sheet.paper.caliper),
      caliperFrom: sheet.paper.why,
    },
    blank: extent(plan.blank),
    closed: { ...extent(plan.closed), thickness: showLength(plan.closed.thickness) },
    dimensions: dimensionsOf(plan),
    scores: { vertical: straightScores(pattern, 'x'), horizontal: straightScores(pattern, 'y') },
    ...showGlue(program),
    ...showLocks(program),
    ...contentsOf(plan),
    ...(fittings === undefined ? {} : { fits: fittings.map(showFitting) }),
    proof: showProof(folded),
    regions: showAppearances(appearances),
    places: showPlaces(folded),
    ...showKnockouts(folded),
    scoring: scoreSideOf(plan.spec.convention),
    foldAllowance: showAllowance(plan),
    reasons: plan.settled.map(({ name, value, decidedBy, why }) => ({
      dimension: name,
      title: titles.get(name) ?? name,
      value: showLength(value),
      decidedBy,
      why,
    })),
    bounds: plan.bounds.map((bound) => ({
      name: bound.name,
      kind: bound.kind,
      ...(bound.path === undefined ? {} : { path: bound.path }),
      why: bound.why,
      slack: showLength(slackOf(bound, plan.dimensions)),
    })),
    warnings: [...warningsOf(folded, appearances)],
    alternatives: alternatives.map(showRemedy),
    cautions: [...cautions],
  };
}

function dimensionsOf(plan: Plan): PlanReply['dimensions'] {
  const tree: Record<string, ShownLength | Record<string, ShownLength>> = {};
  for (const { name } of styleOf(plan.spec).dimensionNames) {
    const shown = showLength(plan.dimensions[name] ?? 0);
    const [group, member] = name.split('.');
    if (group === undefined) continue;
    tree[group] = member === undefined ? shown : { ...(tree[group] as object), [member]: shown };
  }
  return tree;
}

/** Where creases run along one axis, as distances along the other, ascending. */
function straightScores({ vertices, edges }: CreasePattern, axis: 'x' | 'y'): ShownLength[] {
  const positions = edges.flatMap(({ letter, ends }) => {
    const [from, to] = [vertices[ends[0]]?.[axis], vertices[ends[1]]?.[axis]];
    return isCrease({ letter }) && from !== undefined && from === to ? [from] : [];
  });
  return [...new Set(positions)].toSorted((one, other) => one - other).map(showLength);
}

function contentsOf(plan: Plan): Pick<PlanReply, 'contents'> {
  const { load, spec, arrangement, dimensions } = plan;
  if (!load) return {};
  const style = styleOf(spec);
  const depth = style.depth === undefined ? undefined : dimensions[style.depth];
  return {
    contents: {
      item: load.itemName,
      ...extent(load.item),
      turned: arrangement.itemTurned,
      perPocket: load.perPocket,
      pockets: style.pockets.length,
      setThickness: showLength(load.set),
      stackThickness: showLength(stackOf(plan)),
      ...(depth === undefined
        ? {}
        : { spineHolds: setsPerPocket(depth, load.set, style, arrangement.sheet, spec) }),
    },
  };
}

const showFitting = ({ item, envelope, perPocket, turned }: Fitting) => ({
  item: item.id,
  ...(envelope === undefined ? {} : { envelope: envelope.id }),
  perPocket,
  turned,
});

const summaryOf = (plan: Plan) => ({
  sheet: plan.arrangement.sheet.title,
  closed: extent(plan.closed),
  blank: extent(plan.blank),
  ...(plan.load === undefined ? {} : { perPocket: plan.load.perPocket }),
});

/** A remedy or an alternative as a reply gives it. */
export const showRemedy = ({ message, changes, plan }: Remedy): z.output<typeof remedyReply> => ({
  message,
  changes: changes.map(
    ({ op, path, value }): z.output<typeof changeReply> => ({
      op,
      path,
      ...(value === undefined ? {} : { value }),
    }),
  ),
  gives: summaryOf(plan),
});

const nothingFits =
  'No folder from this paper holds a published card, with or without its envelope, even one in each pocket. Ask for a plan with your own contents: the refusal names the bound, what is short, and changes that would help.';

/** What a sheet can become, as a reply gives it; an empty list says why. */
export const showPossible = (possibilities: readonly Possibility[]): z.output<typeof possibleReply> => ({
  possible: possibilities.map(({ item, envelope, perPocket, plan }) => ({
    item: item.id,
    ...(envelope === undefined ? {} : { envelope: envelope.id }),
    perPocket,
    gives: summaryOf(plan),
  })),
  ...(possibilities.length === 0 ? { note: nothingFits } : {}),
});
