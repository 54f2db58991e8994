import type { Control } from './control.ts';
import type { Rectangle } from './free-space.ts';
import type { Job, Room } from './job.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import type { Nesting, Offcut, Placed, SheetLayout, Unplaced } from './nesting.ts';
import { offcutsOf } from './offcuts.ts';
import { pieceArea } from './outline.ts';
import type { PlacedPattern, PlacedPlan } from './placed-plan.ts';
import { edgesShared } from './shared-edges.ts';

/** What was found for one paper. */
export interface PaperResult {
  readonly job: Job;
  readonly plan: PlacedPlan;
  readonly control: Control;
}

/** Plans as the caller reads them: nanometres on whole sheets, numbers of the spec. */
export function nestingOf(spec: NestSpec, results: readonly PaperResult[]): Nesting {
  const layouts = results.flatMap(({ job, plan }) =>
    plan.patterns.map((pattern) => layoutOf(spec, job, pattern)),
  );
  const unplaced = results.flatMap((result) => unplacedOf(spec, result));
  const sheets = layouts.reduce((sum, { times }) => sum + times, 0);
  const bound = results.reduce((sum, { control }) => sum + control.bound, 0);
  const proved = sheets === bound && unplaced.every(({ reason }) => reason === 'too large for every sheet');
  const [used, paper] = layouts.reduce(
    ([sum, whole], { sheet, times, utilisation }) => {
      const area = times * areaOf(spec.sheets[sheet] as NestSheet);
      return [sum + utilisation * area, whole + area];
    },
    [0, 0],
  );
  return {
    layouts,
    unplaced,
    offcuts: offcutsBySize(spec, layouts),
    sheets,
    bound: Math.min(bound, sheets),
    gap: Math.max(0, sheets - bound),
    proved,
    utilisation: paper === 0 ? 0 : used / paper,
    seed: spec.seed,
    evaluations: Math.round(results.reduce((sum, { control }) => sum + control.evaluations, 0)),
    stopped:
      results.findLast(({ control }) => control.stop)?.control.stop ?? (proved ? 'proved' : 'evaluations'),
  };
}

const areaOf = ({ width, height }: { readonly width: number; readonly height: number }): number =>
  width * height;

function layoutOf(spec: NestSpec, job: Job, { room, placed, times }: PlacedPattern): SheetLayout {
  const { sheet: number, face } = job.rooms[room] as Room;
  const sheet = spec.sheets[number] as NestSheet;
  const pieceOf = ({ piece }: Placed) => spec.pieces[piece] as NestPiece;
  const asksForFace = placed.some((each) => pieceOf(each).face !== undefined);
  const apart = placed.map((rectangle) => grown(rectangle, spec.gap));
  const used = placed.reduce((sum, each) => sum + pieceArea(pieceOf(each)), 0);
  return {
    sheet: number,
    ...(asksForFace && face !== undefined ? { face } : {}),
    times,
    placed,
    sharedEdges: spec.gap === 0 ? edgesShared(placed, spec.pieces) : [],
    offcuts: offcutsOf(sheet.width, sheet.height, apart, spec.leastOffcut),
    utilisation: used / areaOf(sheet),
  };
}

const grown = ({ x, y, width, height }: Rectangle, by: number): Rectangle => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});

function unplacedOf(spec: NestSpec, { job, plan }: PaperResult): readonly Unplaced[] {
  return [
    ...job.tooLarge.map(
      (piece): Unplaced => ({
        piece,
        count: spec.pieces[piece]?.count ?? 0,
        reason: 'too large for every sheet',
      }),
    ),
    ...plan.left.flatMap((count, box): Unplaced[] =>
      count > 0 ? [{ piece: job.pieceOf[box] ?? 0, count, reason: 'no sheet left' }] : [],
    ),
  ];
}

/** The largest first; those of one size counted together, however they lie. */
function offcutsBySize(spec: NestSpec, layouts: readonly SheetLayout[]): readonly Offcut[] {
  const bySize = new Map<string, Offcut>();
  for (const { sheet, offcuts, times } of layouts)
    for (const offcut of offcuts) {
      const paper = spec.sheets[sheet]?.paper ?? '';
      const [width, height] = [Math.max(offcut.width, offcut.height), Math.min(offcut.width, offcut.height)];
      const key = `${width} ${height} ${paper}`;
      bySize.set(key, { paper, width, height, count: (bySize.get(key)?.count ?? 0) + times });
    }
  return [...bySize.values()].sort((one, other) => areaOf(other) - areaOf(one));
}
