import type { Kind, Stored } from './store.ts';
import type { Change, Database } from './tables.ts';

/** What names one thing. */
export interface Key {
  readonly owner: string;
  readonly kind: Kind;
  readonly name: string;
}

interface Row extends Key {
  readonly version: number;
  readonly body: string;
  readonly created: string;
  readonly changed: string;
}

/** A stored thing from its row. */
export const storedFrom = ({ owner, kind, name, version, body, created, changed }: Row): Stored =>
  Object.freeze({ owner, kind, name, version, body: JSON.parse(body) as unknown, created, changed });

/** Every revision of every item, with the columns of a {@link Row}. */
export const revisionsOf = (db: Database | Change) =>
  db
    .selectFrom('item')
    .innerJoin('revision', (join) =>
      join
        .onRef('revision.owner', '=', 'item.owner')
        .onRef('revision.kind', '=', 'item.kind')
        .onRef('revision.name', '=', 'item.name'),
    )
    .select([
      'item.owner',
      'item.kind',
      'item.name',
      'item.created',
      'revision.version',
      'revision.body',
      'revision.bytes',
      'revision.changed',
    ]);

/** The current revision of every item. */
export const currentOf = (db: Database | Change) =>
  revisionsOf(db).whereRef('revision.version', '=', 'item.version');

/** The current row of one thing. */
export const currentRow = (db: Database | Change, { owner, kind, name }: Key) =>
  currentOf(db)
    .where('item.owner', '=', owner)
    .where('item.kind', '=', kind)
    .where('item.name', '=', name)
    .executeTakeFirst();

/**
 * Locks all that an owner keeps of a kind until the transaction ends, so that changes follow one another.
 * An update that changes nothing locks the row in both databases, and makes it if it is missing.
 */
export const lockShelf = (change: Change, owner: string, kind: Kind) =>
  change
    .insertInto('shelf')
    .values({ owner, kind, items: 0, bytes: 0, highest_removed: 0 })
    .onConflict((conflict) =>
      conflict.columns(['owner', 'kind']).doUpdateSet((row) => ({ items: row.ref('shelf.items') })),
    )
    .returningAll()
    .executeTakeFirstOrThrow();
