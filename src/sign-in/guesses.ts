import { LRUCache } from 'lru-cache';
import { hashOf } from '../store/secret-hash.ts';
import type { Clock } from '../store/store.ts';

const windowMs = 60_000;

/** Different credentials from one address that may fail in a minute; to send the same one again is no guess. */
const mostGuesses = 10;

/** How often the same one is looked up in vain, so that a forgotten program does not load the database. */
const mostRepeats = 60;

/** Counts that are kept; the least recent go first. */
const mostKept = 10_000;

interface Failures {
  readonly untilMs: number;
  /** How often each failed, by its hash. */
  readonly times: Map<string, number>;
}

export interface Guesses {
  /** In how many seconds a credential from an address may be looked up; undefined for now. */
  waitSeconds(address: string, text: string): number | undefined;
  /** Notes how a look-up ended. */
  ended(address: string, text: string, isTaken: boolean): void;
}

/**
 * Keeps addresses from guessing. A credential that was taken lately is looked up whatever else its address sends, so
 * that nobody is kept out by a neighbour behind the same router or proxy. Each service counts for itself.
 */
export function countGuesses(clock: Clock): Guesses {
  const failures = new LRUCache<string, Failures>({ max: mostKept });
  const taken = new LRUCache<string, true>({ max: mostKept });

  function current(address: string): Failures | undefined {
    const found = failures.get(address);
    return found && found.untilMs > clock().getTime() ? found : undefined;
  }

  return {
    waitSeconds(address, text) {
      const found = current(address);
      if (!found) return undefined;
      const key = hashOf(text);
      const repeats = found.times.get(key);
      const isTooMany =
        repeats === undefined ? found.times.size >= mostGuesses && !taken.has(key) : repeats >= mostRepeats;
      return isTooMany ? Math.ceil((found.untilMs - clock().getTime()) / 1000) : undefined;
    },
    ended(address, text, isTaken) {
      const key = hashOf(text);
      if (isTaken) {
        taken.set(key, true);
        return;
      }
      taken.delete(key);
      const found = current(address) ?? { untilMs: clock().getTime() + windowMs, times: new Map() };
      found.times.set(key, (found.times.get(key) ?? 0) + 1);
      failures.set(address, found);
    },
  };
}
