import { setTimeout as pause } from 'node:timers/promises';
import type { Store } from './store/store.ts';
import { StoreUnavailable } from './store/store-errors.ts';

/** How long an answer is good for, so that probes do not load a database that many services share. */
const keptMs = 1_000;

/** Probes give up after a few seconds; a store that takes as long as this is as good as none. */
const longestMs = 2_000;

/** A database that this version cannot use is a fault of its keeper, too. */
const asFault = (error: unknown): StoreUnavailable =>
  error instanceof StoreUnavailable ? error : new StoreUnavailable('unusable', error);

/** Rejects once the time is over, whatever the work does then. */
async function within<Result>(work: Promise<Result>, mostMs: number): Promise<Result> {
  const done = new AbortController();
  const tooLong = pause(mostMs, undefined, { signal: done.signal }).then(() => {
    throw new StoreUnavailable('unreachable', new Error(`no answer within ${mostMs} ms`));
  });
  try {
    return await Promise.race([work, tooLong]);
  } finally {
    tooLong.catch(() => undefined);
    done.abort();
  }
}

/**
 * Whether the store can do its work. Many may ask at once: it is looked at once a second at most, and never twice at
 * the same time.
 * @returns what resolves if it can, and rejects with {@link StoreUnavailable} if not, after two seconds at most
 */
export function readiness(store: Pick<Store, 'ready'>): () => Promise<void> {
  let running: Promise<void> | undefined;
  let last: { readonly endedMs: number; readonly outcome: Promise<void> } | undefined;

  function look(): Promise<void> {
    const outcome = store.ready().catch((error: unknown) => {
      throw asFault(error);
    });
    const end = () => {
      running = undefined;
      last = { endedMs: performance.now(), outcome };
    };
    outcome.then(end, end);
    return outcome;
  }

  return () => {
    if (last && performance.now() - last.endedMs < keptMs) return last.outcome;
    running ??= look();
    return within(running, longestMs);
  };
}
