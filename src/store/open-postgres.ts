import { Kysely, PostgresDialect, sql } from 'kysely';
import { Pool } from 'pg';
import type { DatabaseUrl } from './database-url.ts';
import { migrate } from './migrate.ts';
import { IncompatibleStore } from './store-errors.ts';
import type { Database, Tables } from './tables.ts';

/** Times in ms. The server gives up before the client does, so that a refusal has a reason. */
const connection = {
  application_name: 'hemfold',
  max: 10,
  connectionTimeoutMillis: 5000,
  idleTimeoutMillis: 30_000,
  maxLifetimeSeconds: 600,
  keepAlive: true,
  keepAliveInitialDelayMillis: 10_000,
  lock_timeout: 4000,
  statement_timeout: 8000,
  idle_in_transaction_session_timeout: 10_000,
  query_timeout: 12_000,
} as const;

/** Names in every script must fit, and sort the same everywhere. */
async function requireUtf8(db: Database): Promise<void> {
  const { rows } = await sql<{ server_encoding: string }>`show server_encoding`.execute(db);
  if (rows[0]?.server_encoding !== 'UTF8')
    throw new IncompatibleStore(
      'The PostgreSQL database must have the encoding UTF8; make a new one with it.',
    );
}

/** Opens a PostgreSQL database with up-to-date tables. */
export async function openPostgres(url: DatabaseUrl): Promise<Database> {
  const pool = new Pool({ ...connection, connectionString: url.reveal() });
  // A connection that breaks while idle leaves the pool by itself; without a listener it would end the process.
  pool.on('error', () => undefined);
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    await requireUtf8(db);
    await migrate(db, sql`text collate "C"`); // in UTF-8 the order of bytes, which is that of code points
    return db;
  } catch (error) {
    await db.destroy();
    throw error;
  }
}
