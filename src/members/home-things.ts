import type { Change } from '../store/tables.ts';
import { homeCaller } from './caller.ts';

/**
 * Gives a new member all that was kept while the service was at home. Rows that others refer to are copied, then
 * those that refer follow, then the old ones go.
 * @returns how many things
 */
export async function giveHomeThings(change: Change, owner: string): Promise<number> {
  const home = homeCaller.owner;
  // locks the shelves, so that nothing is put on them meanwhile
  await change
    .updateTable('shelf')
    .set((row) => ({ items: row.ref('items') }))
    .where('owner', '=', home)
    .execute();
  await change
    .insertInto('shelf')
    .columns(['owner', 'kind', 'items', 'bytes', 'highest_removed'])
    .expression((query) =>
      query
        .selectFrom('shelf')
        .select((row) => [row.val(owner).as('owner'), 'kind', 'items', 'bytes', 'highest_removed'])
        .where('owner', '=', home),
    )
    .execute();
  await change
    .insertInto('item')
    .columns(['owner', 'kind', 'name', 'version', 'created'])
    .expression((query) =>
      query
        .selectFrom('item')
        .select((row) => [row.val(owner).as('owner'), 'kind', 'name', 'version', 'created'])
        .where('owner', '=', home),
    )
    .execute();
  await change.updateTable('revision').set({ owner }).where('owner', '=', home).execute();
  await change.updateTable('share').set({ owner }).where('owner', '=', home).execute();
  const { numDeletedRows } = await change
    .deleteFrom('item')
    .where('owner', '=', home)
    .executeTakeFirstOrThrow();
  await change.deleteFrom('shelf').where('owner', '=', home).execute();
  return Number(numDeletedRows);
}
