import type { Kysely, RawBuilder } from 'kysely';
import type { Migration } from 'kysely/migration';

/**
 * The first tables: shelves, items, revisions, share links.
 * @param keyText the type of text that sorts by code points
 */
export const shelves = (keyText: RawBuilder<unknown>): Migration => ({
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('shelf')
      .addColumn('owner', keyText, (column) => column.notNull())
      .addColumn('kind', keyText, (column) => column.notNull())
      .addColumn('items', 'integer', (column) => column.notNull())
      .addColumn('bytes', 'integer', (column) => column.notNull())
      .addColumn('highest_removed', 'integer', (column) => column.notNull())
      .addPrimaryKeyConstraint('shelf_key', ['owner', 'kind'])
      .execute();
    await db.schema
      .createTable('item')
      .addColumn('owner', keyText, (column) => column.notNull())
      .addColumn('kind', keyText, (column) => column.notNull())
      .addColumn('name', keyText, (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('created', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('item_key', ['owner', 'kind', 'name'])
      .addForeignKeyConstraint('item_shelf', ['owner', 'kind'], 'shelf', ['owner', 'kind'])
      .execute();
    await db.schema
      .createTable('revision')
      .addColumn('owner', keyText, (column) => column.notNull())
      .addColumn('kind', keyText, (column) => column.notNull())
      .addColumn('name', keyText, (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('body', 'text', (column) => column.notNull())
      .addColumn('bytes', 'integer', (column) => column.notNull())
      .addColumn('changed', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('revision_key', ['owner', 'kind', 'name', 'version'])
      .addForeignKeyConstraint(
        'revision_item',
        ['owner', 'kind', 'name'],
        'item',
        ['owner', 'kind', 'name'],
        (key) => key.onDelete('cascade'),
      )
      .execute();
    await db.schema
      .createTable('share')
      .addColumn('id', keyText, (column) => column.notNull().primaryKey())
      .addColumn('owner', keyText, (column) => column.notNull())
      .addColumn('kind', keyText, (column) => column.notNull())
      .addColumn('name', keyText, (column) => column.notNull())
      .addColumn('secret_hash', keyText, (column) => column.notNull().unique())
      .addColumn('created', 'text', (column) => column.notNull())
      .addColumn('expires', 'text')
      .addForeignKeyConstraint(
        'share_item',
        ['owner', 'kind', 'name'],
        'item',
        ['owner', 'kind', 'name'],
        (key) => key.onDelete('cascade'),
      )
      .execute();
    await db.schema.createIndex('share_of_item').on('share').columns(['owner', 'kind', 'name']).execute();
  },
});
