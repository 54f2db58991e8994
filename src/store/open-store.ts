import { join } from 'node:path';
import type { Config } from '../config.ts';
import { defaultLimits, type Limits } from './limits.ts';
import { createRunner } from './runner.ts';
import { createSqlStore } from './sql-store.ts';
import type { Clock, Store } from './store.ts';
import type { Database } from './tables.ts';

export interface StoreOptions {
  readonly limits?: Partial<Limits>;
  /** How long to try while others hold a lock, in ms. */
  readonly patienceMs?: number;
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

/**
 * The store that the settings name: PostgreSQL with `databaseUrl`, otherwise a SQLite file in `dataDir`. Nothing is
 * opened or made before its first use; call `ready()` to have that done, and `close()` in the end.
 */
export function openStore(
  config: Pick<Config, 'dataDir' | 'databaseUrl'>,
  clock: Clock,
  { limits = {}, patienceMs = 5000 }: StoreOptions = {},
): Store {
  const runner = createRunner(() => openDatabase(config), patienceMs);
  return createSqlStore(runner, clock, Object.freeze({ ...defaultLimits, ...limits }));
}
