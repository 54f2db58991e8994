import type { StopRequest } from '../../shared/nesting/control.ts';
import { nest } from '../../shared/nesting/nest.ts';
import type { Nesting } from '../../shared/nesting/nesting.ts';
import { highsSolver } from './highs-solver.ts';
import { type NestTask, stopOf } from './nest-task.ts';

/** Once for each worker: loading the solver takes longer than most searches. */
const solver = highsSolver();

/** Between two reports of progress, ms. */
const reportEveryMs = 100;

/** Runs one search to its end, its time limit or the caller's wish, whichever comes first. */
export default async function nestInWorker({
  spec,
  timeLimitMs,
  stopFlag,
  port,
}: NestTask): Promise<Nesting> {
  const steps = nest(spec, await solver);
  const started = performance.now();
  let reported = Number.NEGATIVE_INFINITY;
  let request: StopRequest | undefined;
  try {
    for (;;) {
      const step = steps.next(request);
      if (step.done === true) return step.value;
      const now = performance.now();
      if (now - reported >= reportEveryMs) {
        port?.postMessage(step.value);
        reported = now;
      }
      request = stopOf(stopFlag) ?? (now - started > timeLimitMs ? 'time limit' : undefined);
    }
  } finally {
    port?.close();
  }
}
