import { MOST_PER_POCKET } from '../contents/contents-schema.ts';
import { contentsDefaults } from '../contents/defaults.ts';
import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import { areaMm2 } from '../lengths/show-length.ts';
import { allowanceIn } from '../paper/fold-allowance.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import type { Dimensions, Style } from '../styles/style.ts';
import { arrangementsOn } from './arrangements.ts';
import type { Bound } from './bounds.ts';
import { demandOf, type Load, loadOf } from './demand.ts';
import type { Row } from './eliminate.ts';
import { largestThat } from './largest-that.ts';
import type { Arrangement, Plan } from './plan.ts';
import { settle } from './settle.ts';
import { type Sheet, sheetsOf } from './sheets.ts';

/** An arrangement that cannot be folded, with the sums of bounds that rule it out. */
export interface Misfit {
  readonly arrangement: Arrangement;
  readonly unknownNames: readonly string[];
  readonly bounds: readonly Bound[];
  readonly contradictions: readonly Row[];
}

export type Solution =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly misfits: readonly Misfit[] };

/** Width of tape that makers use; common practice. */
const usualGlue = inch(1 / 4);

/** A sheet larger than the blank by no more than this stays as it is: a hand cut is no more exact; common practice. */
const notWorthACut = mm(0.5);

/** The grid that scores fall on where the spec does not say: 1/16 in or 1 mm; common practice. */
export function gridOf(spec: FolderSpec): Nm {
  if (spec.grid === 'none') return 0;
  return spec.grid ?? (spec.measure === 'inch' ? inch(1 / 16) : mm(1));
}

/**
 * The best plan for a spec: the smallest sheet on offer that serves, laid out as the style likes it best; or
 * every arrangement's misfit when nothing serves. The same spec always gives the same plan. Where the spec
 * fixes the spine and does not count the contents, each pocket gets as many as fit.
 */
export function solveFolder(spec: FolderSpec): Solution {
  const { contents } = spec;
  if (!contents || contents.perPocket !== undefined || styleOf(spec).givenSpine(spec) === undefined)
    return solveCounted(spec);
  const counted = (perPocket: number): FolderSpec => ({ ...spec, contents: { ...contents, perPocket } });
  const most = largestThat((count) => solveCounted(counted(count)).ok, MOST_PER_POCKET);
  const solution = solveCounted(counted(Math.max(most, 1)));
  return solution.ok ? { ok: true, plan: { ...solution.plan, spec } } : solution;
}

function solveCounted(spec: FolderSpec): Solution {
  const misfits: Misfit[] = [];
  const sheets = sheetsOf(spec).toSorted((one, other) => area(one) - area(other));
  for (const sheet of sheets) {
    const plans = plansOn(sheet, spec, misfits);
    const best = plans.toSorted((one, other) => one.merit - other.merit)[0];
    if (best) return { ok: true, plan: best };
  }
  return { ok: false, misfits };
}

const area = ({ width, height }: { width: Nm; height: Nm }): number => areaMm2(width, height);

/** Every arrangement on one sheet that can be folded; the others are added to `misfits`. */
function plansOn(sheet: Sheet, spec: FolderSpec, misfits: Misfit[]): readonly Plan[] {
  const style = styleOf(spec);
  const load = spec.contents && loadOf(spec.contents, style, sheet, spec);
  return arrangementsOn(sheet, spec).flatMap((arrangement) => {
    const result = attempt(spec, style, arrangement, load);
    if ('contradictions' in result) {
      misfits.push(result);
      return [];
    }
    return [result];
  });
}

function attempt(
  spec: FolderSpec,
  style: Style<FolderSpec>,
  arrangement: Arrangement,
  load: Load | undefined,
): Plan | Misfit {
  const { sheet, itemTurned, rooms } = arrangement;
  const demand = load && demandOf(load, itemTurned, style, spec);
  const grid = gridOf(spec);
  const prefer = spec.prefer ?? 'whole-sheet';
  const { unknowns, bounds } = style.model(spec, {
    rooms,
    demand,
    caliper: sheet.paper.caliper,
    glueWidth: spec.glue?.width ?? usualGlue,
    spineEase: spec.ease?.spine ?? contentsDefaults.spineEase,
    foldLoss: allowanceIn(sheet, grid).entered,
    prefer,
  });
  const outcome = settle(unknowns, bounds, grid);
  if (!outcome.ok) {
    const unknownNames = unknowns.map(({ name }) => name);
    return { arrangement, unknownNames, bounds, contradictions: outcome.contradictions };
  }
  const dimensions = style.dimensions(outcome.values);
  const blank = style.blank(dimensions);
  const onSheet = rooms[0] ?? blank;
  const stack = demand?.stack ?? 0;
  return {
    spec,
    arrangement,
    load,
    dimensions,
    settled: outcome.settled,
    bounds,
    grid,
    blank,
    closed: { ...style.closed(dimensions), thickness: stack + style.layers * sheet.paper.caliper },
    wholeSheet: onSheet.width - blank.width <= notWorthACut && onSheet.height - blank.height <= notWorthACut,
    merit: meritOf(style, dimensions, area(blank) / area(sheet), demand && area(demand), prefer),
  };
}

/** How far a plan is from ideal: paper to spare (or used), odd proportions, and room in the pocket. */
function meritOf(
  style: Style<FolderSpec>,
  dimensions: Dimensions,
  used: number,
  itemArea: number | undefined,
  prefer: 'whole-sheet' | 'least-paper',
): number {
  const paper = prefer === 'whole-sheet' ? 1 - used : used;
  const play = itemArea === undefined ? 0 : 1 - itemArea / area(style.pocket(dimensions));
  return paper + style.oddness(dimensions) / 2 + play / 2;
}
