import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { namesIn } from '../../shared/spec/names-in-spec.ts';
import { readConfig } from '../config.ts';
import { homeCaller } from '../members/caller.ts';
import { type FindKept, findOwn, findStarting } from '../resources/find-kept.ts';
import { replaceNames } from '../resources/replace-names.ts';
import { IncompatibleStore, StoreUnavailable } from '../store/store-errors.ts';
import { CommandFailed } from './read-spec.ts';

/** Runs work with what is kept at home; a store that was never made is not made here. */
async function withHomeThings<Result>(work: (find: FindKept) => Promise<Result>): Promise<Result> {
  const { openStore, sqliteFileName } = await import('../store/open-store.ts');
  const config = readConfig(process.env);
  if (!config.databaseUrl && !existsSync(join(config.dataDir, sqliteFileName))) return work(findStarting);
  const store = openStore(config, () => new Date());
  try {
    return await work(findOwn(store, homeCaller.owner));
  } finally {
    await store.close();
  }
}

/**
 * A spec with everything in place that it names: what is kept at home in the store that the settings name, and the
 * starting conventions.
 * @param spec as it was parsed
 * @throws {CommandFailed} when the store cannot be read
 * @throws {InvalidConfig}
 */
export async function speltSpec(spec: unknown): Promise<unknown> {
  if (namesIn(spec).length === 0) return spec;
  try {
    return await withHomeThings((find) => replaceNames(spec, find));
  } catch (error) {
    if (error instanceof StoreUnavailable || error instanceof IncompatibleStore)
      throw new CommandFailed(`The spec names what is kept, and that cannot be read: ${error.message}`);
    throw error;
  }
}
