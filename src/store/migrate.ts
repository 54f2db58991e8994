import type { RawBuilder } from 'kysely';
import { Migrator } from 'kysely/migration';
import { migrations } from './migrations/registry.ts';
import { IncompatibleStore } from './store-errors.ts';
import type { Database } from './tables.ts';

/** Steps that were taken but are not known here: a newer version was at work on this database. */
const isUnknownStep = (error: unknown) =>
  error instanceof Error && error.message.startsWith('corrupted migrations');

/**
 * Brings the tables up to date, all steps in one transaction under a lock: services may start together.
 * @param keyText the type of text that sorts by code points
 * @throws {IncompatibleStore} for tables of a newer version
 */
export async function migrate(db: Database, keyText: RawBuilder<unknown>): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => ({ ...migrations(keyText) }) },
    migrationTableName: 'migration',
    migrationLockTableName: 'migration_lock',
  });
  const { error } = await migrator.migrateToLatest();
  if (isUnknownStep(error))
    throw new IncompatibleStore(
      'The database was written by another version of hemfold, which this one cannot read. Start that version, or a newer one.',
      { cause: error },
    );
  if (error !== undefined) throw error;
}
