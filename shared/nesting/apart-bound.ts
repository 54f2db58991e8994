import type { Job } from './job.ts';
import { mayLie } from './job.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import { isFree } from './no-fit.ts';
import { STEP } from './outline.ts';
import { type NoFits, noFitCache, type Stance, stancesOf } from './stance.ts';

/** More kinds than this are not compared with one another. */
const mostKinds = 30;

/**
 * The least number of sheets from pieces of which no two, in whatever turns, lie on one sheet: each takes its own. Outlines
 * are made smaller by all that rounding may have added, so that the bound is one.
 */
export function apartBound(spec: NestSpec, job: Job): number {
  const stances = job.pieceOf.map((piece, box) =>
    stancesOf(spec.pieces[piece] as NestPiece, box, { gap: spec.gap, within: true }),
  );
  const noFits = noFitCache();
  const largestFirst = job.boxes
    .map((_, box) => box)
    .sort((one, other) => sizeOf(job, other) - sizeOf(job, one))
    .slice(0, mostKinds);
  const chosen: number[] = [];
  for (const box of largestFirst)
    if (
      ((job.boxes[box]?.count ?? 0) === 1 ||
        !together(spec, job, stances[box] ?? [], stances[box] ?? [], noFits)) &&
      chosen.every((other) => !together(spec, job, stances[other] ?? [], stances[box] ?? [], noFits))
    )
      chosen.push(box);
  return chosen.reduce((sum, box) => sum + (job.boxes[box]?.count ?? 0), 0);
}

const sizeOf = (job: Job, box: number): number =>
  (job.boxes[box]?.width ?? 0) * (job.boxes[box]?.height ?? 0);

/** Whether one of each may lie on some sheet together. */
const together = (
  spec: NestSpec,
  job: Job,
  ones: readonly Stance[],
  others: readonly Stance[],
  noFits: NoFits,
): boolean =>
  job.rooms.some((room) =>
    ones.some((one) =>
      others.some(
        (other) =>
          mayLie(job, room, one.box) &&
          mayLie(job, room, other.box) &&
          shareSheet(spec.sheets[room.sheet] as NestSheet, one, other, noFits),
      ),
    ),
  );

/** Whether some place of one beside the other keeps both within the sheet: the box around both is no larger. */
function shareSheet(
  { width, height, margin }: NestSheet,
  one: Stance,
  other: Stance,
  noFits: NoFits,
): boolean {
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
  return left <= right && top <= bottom && isFree({ left, top, right, bottom }, noFits(one, other));
}
