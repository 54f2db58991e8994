import { sql } from 'kysely';
import { holds } from './expectation.ts';
import { currentRow, type Key, lockShelf } from './rows.ts';
import type { Expectation } from './store.ts';
import type { Change } from './tables.ts';

/** See {@link Store.remove}. Revisions and share links go with their item. */
export async function removeItem(
  change: Change,
  key: Key,
  expected: Expectation,
): Promise<'removed' | 'absent' | 'stale'> {
  const { owner, kind, name } = key;
  const shelf = await lockShelf(change, owner, kind);
  const current = await currentRow(change, key);
  if (!holds(expected, current?.version)) return 'stale';
  if (!current) return 'absent';
  const { bytes } = await change
    .selectFrom('revision')
    .select(sql<number>`cast(sum(bytes) as integer)`.as('bytes'))
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .executeTakeFirstOrThrow();
  await change
    .deleteFrom('item')
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .execute();
  await change
    .updateTable('shelf')
    .set({
      items: shelf.items - 1,
      bytes: shelf.bytes - bytes,
      highest_removed: Math.max(shelf.highest_removed, current.version),
    })
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .execute();
  return 'removed';
}
