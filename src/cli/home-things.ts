import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { readConfig } from '../config.ts';
import { homeCaller } from '../members/caller.ts';
import { type FindKept, findOwn, findStarting } from '../resources/find-kept.ts';
import type { FindPaper } from '../sets/replace-set-names.ts';
import { IncompatibleStore, StoreUnavailable } from '../store/store-errors.ts';
import { CommandFailed } from './read-spec.ts';

/** How to look up what is kept at home. */
export interface HomeThings {
  readonly find: FindKept;
  readonly findPaper: FindPaper;
}

async function withStore<Result>(work: (things: HomeThings) => Promise<Result>): Promise<Result> {
  const { openStore, sqliteFileName } = await import('../store/open-store.ts');
  const config = readConfig(process.env);
  if (!config.databaseUrl && !existsSync(join(config.dataDir, sqliteFileName)))
    return work({ find: findStarting, findPaper: async () => undefined });
  const store = openStore(config, () => new Date());
  const { owner } = homeCaller;
  try {
    return await work({
      find: findOwn(store, owner),
      findPaper: async (name) => (await store.read(owner, 'stock', name))?.body,
    });
  } finally {
    await store.close();
  }
}

/**
 * Runs work with what is kept at home, in the store that the settings name, and the starting conventions. A store that
 * was never made is not made here.
 * @throws {CommandFailed} when the store cannot be read
 * @throws {InvalidConfig}
 */
export async function withHomeThings<Result>(work: (things: HomeThings) => Promise<Result>): Promise<Result> {
  try {
    return await withStore(work);
  } catch (error) {
    if (error instanceof StoreUnavailable || error instanceof IncompatibleStore)
      throw new CommandFailed(`The spec names what is kept, and that cannot be read: ${error.message}`);
    throw error;
  }
}
