import { join } from 'node:path';
import type { Config } from '../config.ts';
import { toldRunner } from '../metrics/told-runner.ts';
import { defaultLimits, type Limits } from './limits.ts';
import { createRunner, type Runner } from './runner.ts';
import { randomShare } from './shares.ts';
import { createSqlStore } from './sql-store.ts';
import type { Clock, NewShare, Store } from './store.ts';
import type { Database } from './tables.ts';

export interface StoreOptions {
  readonly limits?: Partial<Limits>;
  /** How long to try while others hold a lock, in ms. */
  readonly patienceMs?: number;
  /** Where new secrets come from; only examples, which are compared, have another source than chance. */
  readonly newShare?: () => NewShare;
}

/** The file in DATA_DIR. */
export const sqliteFileName = 'hemfold.sqlite';

/** Only the database in use is loaded. */
async function openDatabase({
  dataDir,
  databaseUrl,
}: Pick<Config, 'dataDir' | 'databaseUrl'>): Promise<Database> {
  if (databaseUrl) return (await import('./open-postgres.ts')).openPostgres(databaseUrl);
  return (await import('./open-sqlite.ts')).openSqlite(join(dataDir, sqliteFileName));
}

/** Runs work on the database that the settings name; see {@link openStore}. */
export const openRunner = (
  config: Pick<Config, 'dataDir' | 'databaseUrl'>,
  { patienceMs = 5000 }: StoreOptions = {},
): Runner => toldRunner(createRunner(() => openDatabase(config), patienceMs));

/** The store on a runner's database. */
export const storeOn = (
  runner: Runner,
  clock: Clock,
  { limits = {}, newShare = randomShare }: StoreOptions = {},
): Store => createSqlStore(runner, clock, Object.freeze({ ...defaultLimits, ...limits }), newShare);

/**
 * The store that the settings name: PostgreSQL with `databaseUrl`, otherwise a SQLite file in `dataDir`. Nothing is
 * opened or made before its first use; call `ready()` to have that done, and `close()` in the end.
 */
export const openStore = (
  config: Pick<Config, 'dataDir' | 'databaseUrl'>,
  clock: Clock,
  options: StoreOptions = {},
): Store => storeOn(openRunner(config, options), clock, options);
