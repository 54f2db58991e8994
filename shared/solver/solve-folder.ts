import { MOST_PER_POCKET } from '../contents/contents-schema.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';
import { areaMm2 } from '../lengths/show-length.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import type { Dimensions, Style } from '../styles/style.ts';
import { arrangementsOn } from './arrangements.ts';
import type { Bound } from './bounds.ts';
import { givenDepth, loadOf } from './demand.ts';
import { eliminate, type Row } from './eliminate.ts';
import { gridOf } from './grid.ts';
import { largestThat } from './largest-that.ts';
import type { Arrangement, Plan } from './plan.ts';
import { roughShortfall } from './rough-fit.ts';
import { settle } from './settle.ts';
import { sheetsOf } from './sheets.ts';
import { situationOf } from './situation.ts';

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

/** A sheet larger than the blank by no more than this stays as it is: a hand cut is no more exact; common practice. */
const notWorthACut = mm(0.5);

/** Up to so many sheets it is quicker to solve each than to sort out the hopeless ones. */
const fewSheets = 3;

/** Of arrangements without any chance, this many are looked at closely, so that the refusal can name the nearest. */
const closest = 4;

/**
 * The best plan for a spec: the first sheet that serves, which is the smallest of its owner's, laid out as the style likes it best; or
 * the nearest arrangements' misfits when nothing serves. The same spec always gives the same plan. Where the spec
 * fixes the spine, or what else holds the stack, and does not count the contents, each pocket gets as many as fit.
 */
export function solveFolder(spec: FolderSpec): Solution {
  const { contents } = spec;
  const style = styleOf(spec);
  if (!contents || contents.perPocket !== undefined || givenDepth(style, spec) === undefined)
    return solveCounted(spec);
  const counted = (perPocket: number): FolderSpec => ({ ...spec, contents: { ...contents, perPocket } });
  const one = solveCounted(counted(1));
  if (!one.ok) return one;
  const holds = sheetsOf(spec).map((sheet) => loadOf(contents, style, sheet, spec).spineHolds ?? 1);
  const bySpine = Math.min(Math.max(1, ...holds), MOST_PER_POCKET);
  const most = largestThat((count) => count === 1 || solveCounted(counted(count)).ok, bySpine);
  const solution = most > 1 ? solveCounted(counted(most)) : one;
  return solution.ok ? { ok: true, plan: { ...solution.plan, spec } } : solution;
}

function solveCounted(spec: FolderSpec): Solution {
  const sheets = sheetsOf(spec);
  const shortfall = sheets.length > fewSheets ? roughShortfall(spec) : () => 0;
  const misfits: Misfit[] = [];
  const hopeless: { arrangement: Arrangement; lack: Nm }[] = [];
  for (const sheet of sheets) {
    const plans: Plan[] = [];
    for (const arrangement of arrangementsOn(sheet, spec)) {
      const lack = shortfall(arrangement);
      if (lack > 0) {
        hopeless.push({ arrangement, lack });
        continue;
      }
      const result = attempt(spec, arrangement);
      if (!('contradictions' in result)) plans.push(result);
      // what the spec contradicts by itself, no other sheet mends
      else if (contradictsItself(result)) return { ok: false, misfits: [result] };
      else misfits.push(result);
    }
    const best = plans.toSorted((one, other) => one.merit - other.merit)[0];
    if (best) return { ok: true, plan: best };
  }
  const nearly = hopeless.toSorted((one, other) => one.lack - other.lack).slice(0, closest);
  for (const { arrangement } of nearly) {
    const result = attempt(spec, arrangement);
    if ('contradictions' in result) misfits.push(result);
  }
  return { ok: false, misfits };
}

/** Whether the dimensions that a spec gives rule each other out, whatever the sheet and the contents. */
function contradictsItself({ bounds, unknownNames }: Misfit): boolean {
  const given = bounds.filter(({ kind }) => kind === 'given');
  return given.length > 2 && eliminate(given, unknownNames).contradictions.length > 0;
}

const area = ({ width, height }: { width: Nm; height: Nm }): number => areaMm2(width, height);

function attempt(spec: FolderSpec, arrangement: Arrangement): Plan | Misfit {
  const style = styleOf(spec);
  const { sheet, itemTurned, rooms } = arrangement;
  const load = spec.contents && loadOf(spec.contents, style, sheet, spec);
  const situation = situationOf(spec, sheet, rooms, load, itemTurned);
  const { demand, prefer } = situation;
  const grid = gridOf(spec);
  const { unknowns, bounds } = style.model(spec, situation);
  const outcome = settle(unknowns, bounds, grid);
  if (!outcome.ok) {
    const unknownNames = unknowns.map(({ name }) => name);
    return { arrangement, unknownNames, bounds, contradictions: outcome.contradictions };
  }
  const dimensions = style.dimensions(outcome.values);
  const blank = style.blank(dimensions, spec);
  const onSheet = rooms[0] ?? blank;
  const closed = style.closed(dimensions, spec);
  const thickness = (demand?.stack ?? 0) + (closed.layers ?? style.layers) * sheet.paper.caliper;
  return {
    spec,
    arrangement,
    load,
    dimensions,
    settled: outcome.settled,
    bounds,
    grid,
    blank,
    closed: { width: closed.width, height: closed.height, thickness: closed.thickness ?? thickness },
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
  const pocket = style.pocket?.(dimensions);
  const play = itemArea === undefined || !pocket ? 0 : 1 - itemArea / area(pocket);
  return paper + style.oddness(dimensions) / 2 + play / 2;
}
