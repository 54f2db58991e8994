import type { Control, Steps, StopRequest } from './control.ts';
import type { Job } from './job.ts';
import type { Plan } from './plan.ts';
import { backFrom, jobWith } from './sub-job.ts';

/** Nests the boxes of a job; the seed is the caller's. */
export type NestBoxes = (job: Job, control: Control) => Steps<Plan>;

/**
 * What pieces with outlines left over, nested as boxes on the sheets that are left.
 * @param share of the evaluations left, what it may take
 * @returns a plan in the numbers of the whole job
 */
export function* restByBoxes(
  job: Job,
  left: readonly number[],
  stock: ReadonlyMap<number, number>,
  nestBoxes: NestBoxes,
  share: number,
  control: Control,
): Steps<Plan> {
  const part = jobWith(job, left);
  const rest: Job = {
    ...part.job,
    boxes: part.job.boxes.map((box, index) => ({ ...box, count: part.counts[index] ?? 0 })),
    stock,
  };
  const { paper, evaluations, limit } = control;
  const own: Control = {
    paper,
    evaluations,
    limit: evaluations + share * Math.max(0, limit - evaluations),
    sheets: 0,
    bound: 0,
  };
  return backFrom(part, yield* within(control, own, nestBoxes(rest, own)), job.boxes.length);
}

/** Runs a part of a search: what it costs and whether it was stopped is the whole's, its sheets are its own. */
function* within<Result>(control: Control, own: Control, steps: Steps<Result>): Steps<Result> {
  for (let request: StopRequest | undefined; ; ) {
    const step = steps.next(request);
    control.evaluations = own.evaluations;
    if (own.stop !== undefined) control.stop = own.stop;
    if (step.done === true) return step.value;
    const { paper, sheets, bound } = control;
    request = yield { paper, sheets, bound, evaluations: Math.round(control.evaluations) };
  }
}
