import type { Control, Steps } from './control.ts';
import type { Job } from './job.ts';
import { mayLie } from './job.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import { isFree, noFitWithHollows } from './no-fit.ts';
import { STEP } from './outline.ts';
import { type NoFits, noFitCache, type Stance, stancesOf } from './stance.ts';

/** More kinds than this are not compared with one another. */
const mostKinds = 30;

/** More no-fit polygons than this are not worked out for the bound: pieces in many turns ask for as many of them. */
const mostNoFits = 40;

/**
 * The least number of sheets from pieces of which no two, in whatever turns, lie on one sheet: each takes its own. Outlines
 * are made smaller by all that rounding may have added, so that the bound is one. When it is stopped, the bound is that of
 * the kinds compared so far. What it costs is booked, but takes nothing from the search that follows.
 */
export function* apartBound(
  spec: NestSpec,
  job: Job,
  control: Control,
  noFits = noFitCache(noFitWithHollows),
): Steps<number> {
  const stances = job.pieceOf.map((piece, box) =>
    stancesOf(spec.pieces[piece] as NestPiece, box, { gap: spec.gap, within: true }),
  );
  const { evaluations } = control;
  const pairs: Pairs = { spec, job, stances, noFits: counted(noFits), control };
  const largestFirst = job.boxes
    .map((_, box) => box)
    .sort((one, other) => sizeOf(job, other) - sizeOf(job, one))
    .slice(0, mostKinds);
  const chosen: number[] = [];
  for (const box of largestFirst) if (yield* standsApart(pairs, box, chosen)) chosen.push(box);
  control.limit += control.evaluations - evaluations;
  return chosen.reduce((sum, box) => sum + (job.boxes[box]?.count ?? 0), 0);
}

/** What pairs of boxes are compared by. */
interface Pairs {
  readonly spec: NestSpec;
  readonly job: Job;
  /** By number of the box. */
  readonly stances: readonly (readonly Stance[])[];
  readonly noFits: NoFits;
  readonly control: Control;
}

/** Works out so many no-fit polygons and no more. */
function counted(noFits: NoFits): NoFits {
  let left = mostNoFits;
  return function* noFitOf(other, piece, control) {
    if (left <= 0) return undefined;
    const before = control.evaluations;
    const paths = yield* noFits(other, piece, control);
    if (control.evaluations > before) left--;
    return paths;
  };
}

const sizeOf = (job: Job, box: number): number =>
  (job.boxes[box]?.width ?? 0) * (job.boxes[box]?.height ?? 0);

/** Whether no copy of a box lies on a sheet with another, nor with one of those chosen before. */
function* standsApart(pairs: Pairs, box: number, chosen: readonly number[]): Steps<boolean> {
  const others = (pairs.job.boxes[box]?.count ?? 0) === 1 ? chosen : [box, ...chosen];
  for (const other of others) if (yield* mayShare(pairs, other, box)) return false;
  return true;
}

/** Whether one of each may lie on some sheet together, or it is not known whether they may. */
function* mayShare({ spec, job, stances, noFits, control }: Pairs, first: number, second: number) {
  const [ones, others] = [stances[first] ?? [], stances[second] ?? []];
  // what lies on a sheet also lies on it turned by half
  const halves = turnsByHalf(spec, job, second);
  for (const room of job.rooms) {
    if (!mayLie(job, room, first) || !mayLie(job, room, second)) continue;
    const sheet = spec.sheets[room.sheet] as NestSheet;
    for (const one of halves ? ones.filter(({ turn }) => turn < 180) : ones)
      for (const other of others) if (yield* shareSheet(sheet, one, other, noFits, control)) return true;
  }
  return false;
}

/** Whether a box may also lie turned by half wherever it may lie. */
function turnsByHalf(spec: NestSpec, job: Job, box: number): boolean {
  const piece = spec.pieces[job.pieceOf[box] ?? -1];
  return piece?.outline === undefined || piece.turns !== 'none';
}

/** Whether some place of one beside the other keeps both within the sheet: the box around both is no larger. */
function* shareSheet(
  { width, height, margin }: NestSheet,
  one: Stance,
  other: Stance,
  noFits: NoFits,
  control: Control,
): Steps<boolean> {
  const [across, along] = [width, height].map((side) => Math.ceil((side - 2 * margin) / STEP) + 1) as [
    number,
    number,
  ];
  // side by side or one below the other, as boxes: nothing to be worked out
  if (one.width + other.width <= across || one.height + other.height <= along) {
    const lies = (stance: Stance) => stance.width <= across && stance.height <= along;
    return lies(one) && lies(other);
  }
  const [left, top] = [one.width - across, one.height - along];
  const [right, bottom] = [across - other.width, along - other.height];
  if (left > right || top > bottom) return false;
  const forbidden = yield* noFits(one, other, control);
  return forbidden === undefined || isFree({ left, top, right, bottom }, forbidden);
}
