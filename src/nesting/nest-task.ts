import type { MessagePort } from 'node:worker_threads';
import type { StopRequest } from '../../shared/nesting/control.ts';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';

/** What the service hands to a worker. */
export interface NestTask {
  readonly spec: NestInput;
  /** After so many milliseconds the best so far is the answer. */
  readonly timeLimitMs: number;
  /** One shared number: a worker that computes reads no messages, but it can look at this. */
  readonly stopFlag: Int32Array<SharedArrayBuffer>;
  /** Where progress goes; absent when nobody asked. */
  readonly port?: MessagePort;
}

/** Values of the flag. */
export const running = 0;
export const stopRequested = 1;

export const stopOf = (flag: Int32Array<SharedArrayBuffer>): StopRequest | undefined =>
  Atomics.load(flag, 0) === stopRequested ? 'cancelled' : undefined;
