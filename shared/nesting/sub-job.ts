import type { Job } from './job.ts';
import type { Plan } from './plan.ts';

/** A job with only the boxes of which there are copies, so that its cost depends on them alone. */
export interface SubJob {
  readonly job: Job;
  readonly counts: readonly number[];
  /** Numbers of its boxes in the whole job. */
  readonly numbers: readonly number[];
}

export function jobWith(job: Job, counts: readonly number[]): SubJob {
  const numbers = counts.flatMap((count, box) => (count > 0 ? [box] : []));
  return {
    job: {
      ...job,
      boxes: numbers.map((box) => job.boxes[box] as Job['boxes'][number]),
      pieceOf: numbers.map((box) => job.pieceOf[box] ?? 0),
      faceOf: numbers.map((box) => job.faceOf[box]),
    },
    counts: numbers.map((box) => counts[box] ?? 0),
    numbers,
  };
}

/** A plan for a part of a job, in the numbers of the whole. */
export function backFrom({ numbers }: SubJob, { patterns, left }: Plan, boxes: number): Plan {
  const all = Array.from({ length: boxes }, () => 0);
  left.forEach((count, box) => {
    all[numbers[box] ?? 0] = count;
  });
  return {
    patterns: patterns.map((pattern) => ({
      ...pattern,
      spots: pattern.spots.map((spot) => ({ ...spot, box: numbers[spot.box] ?? 0 })),
    })),
    left: all,
  };
}
