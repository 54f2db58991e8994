import { setTimeout as pause } from 'node:timers/promises';
import { faultOf } from './faults.ts';
import { StoreUnavailable } from './store-errors.ts';
import type { Change, Database } from './tables.ts';

/** Runs work on a database that is opened when it is first needed. Failures of the database are {@link StoreUnavailable}. */
export interface Runner {
  /** For a single statement, which sees one state of the database. */
  read<Result>(work: (db: Database) => Promise<Result>): Promise<Result>;
  /** One transaction. It may run more than once before it holds, so it does nothing but database work. */
  change<Result>(work: (change: Change) => Promise<Result>): Promise<Result>;
  /**
   * Reads one state of the database in many statements, on a connection of its own, so that others go on meanwhile.
   * It runs once: work that has begun to send cannot begin again.
   */
  snapshot<Result>(work: (db: Change) => Promise<Result>): Promise<Result>;
  close(): Promise<void>;
}

const firstPauseMs = 2;
const longestPauseMs = 100;

/** @throws the error, as {@link StoreUnavailable} if it is one of the database */
function throwAsFault(error: unknown): never {
  const fault = faultOf(error);
  throw fault === undefined ? error : new StoreUnavailable(fault, error);
}

/** Tries again while others hold a lock; the pauses grow, and differ between rivals. */
async function whileBusy<Result>(work: () => Promise<Result>, patienceMs: number): Promise<Result> {
  const begun = performance.now();
  for (let longest = firstPauseMs; ; longest = Math.min(2 * longest, longestPauseMs)) {
    try {
      return await work();
    } catch (error) {
      if (faultOf(error) !== 'busy' || performance.now() - begun > patienceMs) throwAsFault(error);
    }
    await pause(longest * (0.5 + Math.random() / 2));
  }
}

/**
 * @param open is called when the database is first needed, and again after it failed
 * @param patienceMs how long to try while the database is locked
 */
export function createRunner(open: () => Promise<Database>, patienceMs: number): Runner {
  const running = new Set<Promise<unknown>>();
  let opened: Promise<Database> | undefined;
  let closed: Promise<void> | undefined;

  function database(): Promise<Database> {
    opened ??= open().catch((error: unknown) => {
      opened = undefined;
      throw error;
    });
    return opened;
  }

  /** Keeps the database open while a task runs. */
  async function keep<Result>(begin: () => Promise<Result>): Promise<Result> {
    if (closed) throw new StoreUnavailable('closed');
    const task = begin();
    running.add(task);
    try {
      return await task;
    } finally {
      running.delete(task);
    }
  }

  const run = <Result>(work: (db: Database) => Promise<Result>) =>
    keep(() => whileBusy(async () => work(await database()), patienceMs));

  async function readSnapshot<Result>(work: (db: Change) => Promise<Result>): Promise<Result> {
    const db = await whileBusy(open, patienceMs);
    try {
      return await db
        .transaction()
        .setIsolationLevel('repeatable read')
        .setAccessMode('read only')
        .execute(work)
        .catch(throwAsFault);
    } finally {
      await db.destroy();
    }
  }

  async function close(): Promise<void> {
    await Promise.allSettled(running);
    await (await opened)?.destroy();
  }

  return Object.freeze<Runner>({
    read: run,
    snapshot: (work) => keep(() => readSnapshot(work)),
    change: <Result>(work: (change: Change) => Promise<Result>) =>
      run((db) => db.transaction().execute(work)),
    close: () => {
      closed ??= close();
      return closed;
    },
  });
}
