import { holds } from './expectation.ts';
import type { Limits } from './limits.ts';
import { currentRow, type Key, lockShelf, storedFrom } from './rows.ts';
import type { Expectation, Kind, Put } from './store.ts';
import { BodyTooLarge } from './store-errors.ts';
import type { Change } from './tables.ts';

/** Kinds whose older versions stay readable. */
const versioned: ReadonlySet<Kind> = new Set(['designs']);

/** A body as it is written, with its size in bytes. */
export interface Written {
  readonly body: string;
  readonly bytes: number;
}

/**
 * @throws {BodyTooLarge}
 * @throws {TypeError} for a value that is not JSON
 */
export function writeBody(value: unknown, mostBytes: number): Written {
  const body: string | undefined = JSON.stringify(value);
  if (body === undefined) throw new TypeError('the body is not JSON');
  const bytes = Buffer.byteLength(body);
  if (bytes > mostBytes) throw new BodyTooLarge(mostBytes);
  return { body, bytes };
}

/** See {@link Store.put}. */
export async function putItem(
  change: Change,
  key: Key,
  { body, bytes }: Written,
  expected: Expectation,
  { limits, now }: { readonly limits: Limits; readonly now: string },
): Promise<Put> {
  const shelf = await lockShelf(change, key.owner, key.kind);
  const current = await currentRow(change, key);
  const unchanged = current ? { stored: storedFrom(current) } : {};
  if (!holds(expected, current?.version)) return { outcome: 'stale', ...unchanged };
  if (current?.body === body) return { outcome: 'same', ...unchanged };

  const keepsOlder = versioned.has(key.kind);
  const items = shelf.items + (current ? 0 : 1);
  const kept = shelf.bytes + bytes - (current && !keepsOlder ? current.bytes : 0);
  if (items > limits.items || kept > limits.bytes) return { outcome: 'full', ...unchanged };

  const version = (current?.version ?? shelf.highest_removed) + 1;
  const created = current?.created ?? now;
  const { owner, kind, name } = key;
  await change
    .insertInto('item')
    .values({ owner, kind, name, version, created })
    .onConflict((conflict) => conflict.columns(['owner', 'kind', 'name']).doUpdateSet({ version }))
    .execute();
  if (current && !keepsOlder)
    await change
      .deleteFrom('revision')
      .where('owner', '=', owner)
      .where('kind', '=', kind)
      .where('name', '=', name)
      .execute();
  await change
    .insertInto('revision')
    .values({ owner, kind, name, version, body, bytes, changed: now })
    .execute();
  await change
    .updateTable('shelf')
    .set({ items, bytes: kept })
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .execute();
  return {
    outcome: current ? 'replaced' : 'created',
    stored: storedFrom({ owner, kind, name, version, body, created, changed: now }),
  };
}
