import { extname } from 'node:path';
import { MessageChannel } from 'node:worker_threads';
import { Piscina } from 'piscina';
import { type NestInput, nestSpec } from '../../shared/nesting/nest-spec.ts';
import type { Nesting, NestProgress } from '../../shared/nesting/nesting.ts';
import { type NestTask, running, stopRequested } from './nest-task.ts';

export interface NestingOptions {
  /** When aborted, the best so far is the answer, and says that it was cancelled. */
  readonly signal?: AbortSignal;
  /** A safety stop, ms. Within it the answer depends on spec and seed alone. Default {@link defaultTimeLimitMs}. */
  readonly timeLimitMs?: number;
  /** Called about ten times a second, never after the answer. */
  readonly onProgress?: (progress: NestProgress) => void;
}

export interface NestingPool {
  /**
   * Places pieces on sheets in a worker.
   * @throws {TooBusyError} when too many wait already
   * @throws {ZodError} where the spec is not one
   */
  readonly run: (spec: NestInput, options?: NestingOptions) => Promise<Nesting>;
  /** Ends the workers; searches that run are given up. */
  readonly close: () => Promise<void>;
}

export const defaultTimeLimitMs = 30_000;

export interface PoolSize {
  /** Searches at a time; each keeps one processor busy. */
  readonly threads: number;
  /** Searches that may wait. */
  readonly waiting: number;
  /** Milliseconds that a search may last together with those before it, by their time limits; one alone always may. */
  readonly answerMs: number;
  /** A worker with nothing to do ends after so many milliseconds, so that a service at rest keeps none. */
  readonly idleMs: number;
}

/** Each is answered before proxies and sockets give up (`docker/haproxy.cfg`), with time left for what is not nesting. */
const usual: PoolSize = { threads: 1, waiting: 4, answerMs: 90_000, idleMs: 10_000 };

/** Thrown at once rather than let a caller wait for minutes. */
export class TooBusyError extends Error {
  override name = 'TooBusyError';
  constructor(options?: ErrorOptions) {
    super('too many nestings wait already', options);
  }
}

/** Workers start when they are first needed. */
export function nestingPool(size: Partial<PoolSize> = {}): NestingPool {
  const { threads, waiting, answerMs, idleMs } = { ...usual, ...size };
  const worker = new URL(`./nest-worker${extname(import.meta.filename)}`, import.meta.url).href;
  let pool: Piscina<NestTask, Nesting> | undefined;
  /** Time limits of all searches that run or wait, added up. */
  let aheadMs = 0;
  const started = () => {
    pool ??= new Piscina<NestTask, Nesting>({
      filename: worker,
      minThreads: 0,
      maxThreads: threads,
      maxQueue: waiting,
      idleTimeout: idleMs,
    });
    return pool;
  };

  const run = async (spec: NestInput, options: NestingOptions = {}): Promise<Nesting> => {
    const { signal, timeLimitMs = defaultTimeLimitMs, onProgress } = options;
    nestSpec.parse(spec); // here, since errors lose their members on the way from a worker
    if (aheadMs > 0 && aheadMs / threads + timeLimitMs > answerMs) throw new TooBusyError();
    const stopFlag = new Int32Array(new SharedArrayBuffer(4));
    Atomics.store(stopFlag, 0, signal?.aborted === true ? stopRequested : running);
    const stop = () => Atomics.store(stopFlag, 0, stopRequested);
    signal?.addEventListener('abort', stop, { once: true });
    const channel = onProgress === undefined ? undefined : new MessageChannel();
    if (onProgress !== undefined) channel?.port1.on('message', onProgress);
    aheadMs += timeLimitMs;
    try {
      const port = channel?.port2;
      return await started().run(
        { spec, timeLimitMs, stopFlag, ...(port === undefined ? {} : { port }) },
        { transferList: port === undefined ? [] : [port] },
      );
    } catch (error) {
      if (error instanceof Error && error.message === 'Task queue is at limit')
        throw new TooBusyError({ cause: error });
      throw error;
    } finally {
      aheadMs -= timeLimitMs;
      signal?.removeEventListener('abort', stop);
      channel?.port1.close();
    }
  };

  return {
    run,
    close: async () => {
      await pool?.destroy();
      pool = undefined;
    },
  };
}
