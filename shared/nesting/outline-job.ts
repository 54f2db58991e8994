import type { Area, Lying } from './fill-by-outline.ts';
import { type Job, mayLie, type Room } from './job.ts';
import type { NestPiece, NestSheet, NestSpec } from './nest-spec.ts';
import { STEP } from './outline.ts';
import type { PlacedPattern } from './placed-plan.ts';
import type { NestBoxes } from './rest-by-boxes.ts';
import { type NoFits, noFitCache, type Stance, stancesOf } from './stance.ts';

/** All that nesting a job by its outlines goes by. */
export interface OutlineJob {
  readonly spec: NestSpec;
  readonly job: Job;
  /** By number of the box. */
  readonly stances: readonly (readonly Stance[])[];
  readonly noFits: NoFits;
  /** For rectangles that are left over. */
  readonly nestBoxes: NestBoxes;
  /** Numbers of the rooms, the largest first. */
  readonly rooms: readonly number[];
}

export function outlineJob(spec: NestSpec, job: Job, nestBoxes: NestBoxes): OutlineJob {
  const gap = Math.max(spec.gap, spec.outlineGap);
  const area = (room: number) => job.rooms[room]?.area ?? 0;
  return {
    spec,
    job,
    stances: job.pieceOf.map((piece, box) => stancesOf(spec.pieces[piece] as NestPiece, box, { gap })),
    noFits: noFitCache(),
    nestBoxes,
    rooms: job.rooms.map((_, index) => index).sort((one, other) => area(other) - area(one) || one - other),
  };
}

const pieceOf = ({ spec, job }: OutlineJob, box: number): NestPiece =>
  spec.pieces[job.pieceOf[box] ?? -1] as NestPiece;

export const isIrregular = (all: OutlineJob, box: number): boolean => pieceOf(all, box).outline !== undefined;

/** What of a room's sheet can be used, in steps. */
export function areaOf({ spec, job }: OutlineJob, room: number): Area {
  const { width, height, margin } = spec.sheets[job.rooms[room]?.sheet ?? -1] as NestSheet;
  return { width: Math.floor((width - 2 * margin) / STEP), height: Math.floor((height - 2 * margin) / STEP) };
}

/** Whether a box lies in a room in one of some stances. */
export function liesIn(all: OutlineJob, room: number, stances: readonly Stance[]): boolean {
  const { width, height } = areaOf(all, room);
  return stances.some(
    (stance) =>
      mayLie(all.job, all.job.rooms[room] as Room, stance.box) &&
      stance.width <= width &&
      stance.height <= height,
  );
}

/** What lies in a room, in nanometres on its whole sheet. */
export function placedPattern(
  all: OutlineJob,
  room: number,
  lying: readonly Lying[],
  times: number,
): PlacedPattern {
  const { spec, job } = all;
  const margin = spec.sheets[job.rooms[room]?.sheet ?? -1]?.margin ?? 0;
  return {
    room,
    times,
    placed: lying.map(({ x, y, stance }) => {
      const { width, height } = pieceOf(all, stance.box);
      const [across, along] = stance.turn % 180 === 0 ? [width, height] : [height, width];
      return {
        piece: job.pieceOf[stance.box] ?? 0,
        x: x * STEP + margin,
        y: y * STEP + margin,
        width: across,
        height: along,
        turn: stance.turn,
      };
    }),
  };
}
