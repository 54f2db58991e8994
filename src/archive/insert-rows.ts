import { setImmediate as turn } from 'node:timers/promises';
import type { Insertable } from 'kysely';
import type { Change, Tables } from '../store/tables.ts';

/** Tables in an order in which no row comes before one that it refers to. */
const order = ['member', 'token', 'shelf', 'item', 'revision', 'share', 'audit'] as const;
type Table = (typeof order)[number];

/** Few enough columns in all for the parameters of one statement in both databases. */
const mostRows = 200;
const mostBytes = 1024 * 1024;

/** Gathers rows, and inserts them some hundred at a time. */
export function rowInserter(change: Change) {
  let waiting = new Map<Table, object[]>();
  let bytes = 0;
  let rows = 0;

  async function flush(): Promise<void> {
    const all = waiting;
    waiting = new Map();
    bytes = 0;
    rows = 0;
    for (const table of order) {
      const values = all.get(table);
      // each row was typed by the table that it was added for
      if (values)
        await change
          .insertInto(table)
          .values(values as Insertable<Tables[Table]>[])
          .execute();
    }
    await turn(); // SQLite works while the whole process waits
  }

  return {
    flush,
    /** @param size of the row in bytes, where it may be large */
    async add<Name extends Table>(table: Name, row: Insertable<Tables[Name]>, size = 0): Promise<void> {
      const values = waiting.get(table);
      if (values) values.push(row);
      else waiting.set(table, [row]);
      rows++;
      bytes += size;
      if (rows >= mostRows || bytes >= mostBytes) await flush();
    },
  };
}
