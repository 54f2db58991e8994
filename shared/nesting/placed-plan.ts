import type { Job, Room } from './job.ts';
import type { NestSheet, NestSpec } from './nest-spec.ts';
import type { Placed } from './nesting.ts';
import type { Pattern, Plan } from './plan.ts';

/** A layout in nanometres on its whole sheet, for so many sheets. */
export interface PlacedPattern {
  /** Number of the room in the job. */
  readonly room: number;
  readonly times: number;
  readonly placed: readonly Placed[];
}

export interface PlacedPlan {
  readonly patterns: readonly PlacedPattern[];
  /** Copies left over by number of the box, for want of sheets. */
  readonly left: readonly number[];
}

/** A plan of boxes, which carry their gaps, as the pieces lie. */
export const placedPlan = (spec: NestSpec, job: Job, { patterns, left }: Plan): PlacedPlan => ({
  patterns: patterns.map((pattern) => placedPattern(spec, job, pattern)),
  left,
});

function placedPattern(spec: NestSpec, job: Job, { room, spots, times }: Pattern): PlacedPattern {
  const { sheet } = job.rooms[room] as Room;
  const { margin } = spec.sheets[sheet] as NestSheet;
  return {
    room,
    times,
    placed: spots.map((spot) => ({
      piece: job.pieceOf[spot.box] ?? 0,
      x: spot.x * job.unit + margin,
      y: spot.y * job.unit + margin,
      width: spot.width * job.unit - spec.gap,
      height: spot.height * job.unit - spec.gap,
      turn: spot.turned ? 90 : 0,
    })),
  };
}
