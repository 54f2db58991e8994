import { setImmediate as turn } from 'node:timers/promises';

/**
 * All rows of a table, read page by page, each page after the last row of the one before. Others have their turn
 * between pages, since SQLite works while the whole process waits.
 */
export async function* inPages<Row>(
  read: (last: Row | undefined) => Promise<readonly Row[]>,
): AsyncGenerator<readonly Row[]> {
  for (let last: Row | undefined; ; ) {
    const rows = await read(last);
    if (rows.length === 0) return;
    yield rows;
    last = rows.at(-1);
    await turn();
  }
}
