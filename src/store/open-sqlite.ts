import { closeSync, mkdirSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Kysely, sql } from 'kysely';
import { migrate } from './migrate.ts';
import { NodeSqliteDialect } from './sqlite-dialect.ts';
import type { Database, Tables } from './tables.ts';

/** How long SQLite itself waits for a lock, in ms. Short, since it stops the whole process; the runner waits longer. */
const lockWaitMs = 25;

/** Foreign keys are on already: `node:sqlite` sees to it. */
const pragmas = [
  'journal_mode = wal', // readers and a writer side by side
  'synchronous = full', // a commit is on the disk when it returns
  'trusted_schema = off',
];

/**
 * Makes the file and its folder for this user alone; SQLite gives the files beside it the same mode. A file that is
 * there is not touched: closing it would drop the locks that other connections of this process hold on it
 * (sqlite.org/howtocorrupt.html, section 2.2). For the same reason nothing here waits.
 */
function makePrivateFile(path: string): void {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  try {
    closeSync(openSync(path, 'wx', 0o600));
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  }
}

/**
 * Opens a SQLite database with up-to-date tables; makes what is missing.
 * @param path of the file
 */
export async function openSqlite(path: string): Promise<Database> {
  makePrivateFile(path);
  const database = new DatabaseSync(path, { timeout: lockWaitMs });
  try {
    for (const pragma of pragmas) database.exec(`pragma ${pragma}`);
    const db = new Kysely<Tables>({ dialect: new NodeSqliteDialect(database) });
    await migrate(db, sql`text`); // SQLite compares text byte by byte, and UTF-8 sorts as its code points do
    return db;
  } catch (error) {
    database.close();
    throw error;
  }
}
