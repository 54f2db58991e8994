import { apartBound } from './apart-bound.ts';
import { areaOf } from './box.ts';
import type { Control, Steps } from './control.ts';
import type { Job, Room } from './job.ts';
import { nestOutlines } from './nest-outlines.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import { offcutsOf } from './offcuts.ts';
import { pieceArea } from './outline.ts';
import { outlineJob } from './outline-job.ts';
import type { PlacedPlan } from './placed-plan.ts';
import { randomFrom } from './random.ts';
import type { NestBoxes } from './rest-by-boxes.ts';
import { sheetBound } from './sheet-bound.ts';
import { jobWith } from './sub-job.ts';

/**
 * Goes on from a plan of boxes with the pieces' own outlines, where some are no rectangles, and keeps what is better. The
 * bound is then by area, by what is left without the irregular pieces, and by pieces that cannot share a sheet, since
 * outlines may lie within one another's boxes.
 */
export function* nestByOutlines(
  spec: NestSpec,
  job: Job,
  known: PlacedPlan,
  control: Control,
  nestBoxes: NestBoxes,
): Steps<PlacedPlan> {
  control.bound = Math.max(areaBound(spec, job), rectangleBound(spec, job));
  control.bound = Math.max(control.bound, yield* apartBound(spec, job, control));
  const sheets = known.patterns.reduce((sum, { times }) => sum + times, 0);
  const single = known.patterns.length <= 1;
  if (known.left.every((count) => count === 0) && sheets <= control.bound && !single) return known;
  const better = (one: PlacedPlan, other: PlacedPlan) => compare(spec, job, one, other) < 0;
  return yield* nestOutlines(outlineJob(spec, job, nestBoxes), known, randomFrom(spec.seed), control, better);
}

/** Sheets for the rectangles alone. */
function rectangleBound(spec: NestSpec, job: Job): number {
  const counts = job.boxes.map(({ count }, box) =>
    spec.pieces[job.pieceOf[box] ?? -1]?.outline === undefined ? count : 0,
  );
  return sheetBound(jobWith(job, counts).job);
}

function areaBound(spec: NestSpec, job: Job): number {
  const area = job.pieceOf.reduce((sum, number) => {
    const piece = spec.pieces[number] as NestPiece;
    return sum + piece.count * pieceArea(piece);
  }, 0);
  const sheets = job.rooms.map(({ sheet }) => spec.sheets[sheet] as NestSheet);
  const largest = Math.max(
    ...sheets.map(({ width, height, margin }) => (width - 2 * margin) * (height - 2 * margin)),
  );
  return Math.ceil((area / largest) * (1 - 1e-9));
}

/** Negative where `one` leaves less, then takes fewer sheets, less paper, fewer layouts, then leaves a larger offcut. */
function compare(spec: NestSpec, job: Job, one: PlacedPlan, other: PlacedPlan): number {
  const sum = (plan: PlacedPlan, of: (room: Room) => number) =>
    plan.patterns.reduce((total, { room, times }) => total + times * of(job.rooms[room] as Room), 0);
  const left = (plan: PlacedPlan) => plan.left.reduce((total, count) => total + count, 0);
  return (
    left(one) - left(other) ||
    sum(one, () => 1) - sum(other, () => 1) ||
    Math.sign(sum(one, ({ area }) => area) - sum(other, ({ area }) => area)) ||
    one.patterns.length - other.patterns.length ||
    largestOffcut(spec, job, other) - largestOffcut(spec, job, one)
  );
}

function largestOffcut(spec: NestSpec, job: Job, { patterns }: PlacedPlan): number {
  const areas = patterns.map(({ room, placed }) => {
    const { width, height } = spec.sheets[job.rooms[room]?.sheet ?? -1] as NestSheet;
    const [largest] = offcutsOf(width, height, placed, spec.leastOffcut);
    return largest === undefined ? 0 : areaOf(largest);
  });
  return Math.max(0, ...areas);
}
