import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { openStore, sqliteFileName } from '../../src/store/open-store.ts';
import type { Model } from '../src/store/store-model.ts';
import { killWriter } from './kill-writer.ts';
import { afterOperations, countHeld } from './operations.ts';

/** Where a run of crashes stands. */
export interface CrashRun {
  /** Changes that the store holds. */
  readonly held: number;
  /** Crashes that fell within a change which was then found done. */
  readonly inFlight: number;
  readonly model: Model;
}

export const firstRun: CrashRun = { held: 0, inFlight: 0, model: new Map() };

/** @throws {Error} if SQLite finds the file damaged */
function requireWhole(file: string): void {
  const database = new DatabaseSync(file);
  try {
    const found = [
      ...database
        .prepare('pragma integrity_check')
        .all()
        .map(({ integrity_check: text }) => text),
      ...database
        .prepare('pragma foreign_key_check')
        .all()
        .map(({ table }) => `a foreign key of ${String(table)}`),
    ];
    if (found.join() !== 'ok') throw new Error(`the file is damaged: ${found.join(', ')}`);
  } finally {
    database.close();
  }
}

/**
 * One crash on top of those before: kills a writer, then holds the file to what it acknowledged.
 * @throws {Error} if an acknowledged change is missing, half a change is there, or the file is damaged
 */
export async function crashOnce(
  dataDir: string,
  run: CrashRun,
  { seed, acknowledge }: { readonly seed: number; readonly acknowledge: number },
): Promise<CrashRun> {
  const acknowledged = await killWriter(dataDir, { seed, from: run.held, acknowledge });
  requireWhole(join(dataDir, sqliteFileName));
  const store = openStore({ dataDir, databaseUrl: undefined }, () => new Date());
  try {
    const held = await countHeld(store, run.model, seed, run.held, acknowledged);
    if (held === undefined)
      throw new Error(
        `after change ${acknowledged} of seed ${seed} the store does not hold what it acknowledged`,
      );
    return {
      held,
      inFlight: run.inFlight + (held - acknowledged),
      model: afterOperations(run.model, seed, run.held, held),
    };
  } finally {
    await store.close();
  }
}
