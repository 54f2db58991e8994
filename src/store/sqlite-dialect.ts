import type { DatabaseSync, SQLInputValue } from 'node:sqlite';
import {
  CompiledQuery,
  type DatabaseConnection,
  type Driver,
  SqliteAdapter,
  type SqliteDatabase,
  SqliteDialect,
  SqliteDriver,
} from 'kysely';

/** The database of `node:sqlite` as Kysely's own SQLite driver wants to see it. */
const asKyselyDatabase = (database: DatabaseSync): SqliteDatabase => ({
  close: () => database.close(),
  prepare: (text) => {
    const statement = database.prepare(text);
    // Kysely hands on what its table types let through: text, whole numbers and null
    const values = (parameters: readonly unknown[]) => parameters as readonly SQLInputValue[];
    return {
      reader: statement.columns().length > 0,
      all: (parameters) => statement.all(...values(parameters)),
      run: (parameters) => statement.run(...values(parameters)),
      iterate: (parameters) => statement.iterate(...values(parameters)),
    };
  },
});

class NodeSqliteDriver extends SqliteDriver {
  readonly #database: DatabaseSync;
  constructor(database: DatabaseSync) {
    super({ database: asKyselyDatabase(database) });
    this.#database = database;
  }

  /**
   * Takes the write lock at once, since a transaction that reads first could not take it after another one wrote;
   * one that only reads takes none. Transactions of SQLite are serializable, whatever they ask for.
   */
  override async beginTransaction(
    connection: DatabaseConnection,
    settings?: Parameters<Driver['beginTransaction']>[1],
  ): Promise<void> {
    const only = settings?.accessMode === 'read only';
    await connection.executeQuery(CompiledQuery.raw(only ? 'begin' : 'begin immediate'));
  }

  /** A full disk has already ended the transaction; a second end would hide the error that says so. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.isTransaction) await super.rollbackTransaction(connection);
  }
}

class NodeSqliteAdapter extends SqliteAdapter {
  /** SQLite's tables do change in transactions; migrations are serialised by their write lock. */
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** Kysely's SQLite dialect over the SQLite that is built into Node. */
export class NodeSqliteDialect extends SqliteDialect {
  readonly #database: DatabaseSync;
  constructor(database: DatabaseSync) {
    super({ database: asKyselyDatabase(database) });
    this.#database = database;
  }

  override createDriver(): Driver {
    return new NodeSqliteDriver(this.#database);
  }

  override createAdapter(): SqliteAdapter {
    return new NodeSqliteAdapter();
  }
}
