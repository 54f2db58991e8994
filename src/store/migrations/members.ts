import type { Kysely, RawBuilder } from 'kysely';
import type { Migration } from 'kysely/migration';

/**
 * Members of a group: their tokens, their sessions in browsers, and what was done to them.
 * @param keyText the type of text that sorts by code points
 */
export const members = (keyText: RawBuilder<unknown>): Migration => ({
  async up(db: Kysely<unknown>): Promise<void> {
    await db.schema
      .createTable('member')
      .addColumn('id', keyText, (column) => column.notNull().primaryKey())
      .addColumn('name', keyText, (column) => column.notNull().unique())
      .addColumn('active', 'integer', (column) => column.notNull())
      .addColumn('created', 'text', (column) => column.notNull())
      .execute();
    await db.schema
      .createTable('token')
      .addColumn('id', keyText, (column) => column.notNull().primaryKey())
      .addColumn('member', keyText, (column) => column.notNull().references('member.id').onDelete('cascade'))
      .addColumn('secret_hash', keyText, (column) => column.notNull())
      .addColumn('scopes', 'text', (column) => column.notNull())
      .addColumn('created', 'text', (column) => column.notNull())
      .addColumn('expires', 'text')
      .addColumn('last_used', 'text')
      .addColumn('revoked', 'text')
      .addColumn('note', 'text')
      .execute();
    await db.schema.createIndex('token_of_member').on('token').columns(['member', 'id']).execute();
    await db.schema
      .createTable('session')
      .addColumn('secret_hash', keyText, (column) => column.notNull().primaryKey())
      .addColumn('token', keyText, (column) => column.notNull().references('token.id').onDelete('cascade'))
      .addColumn('created', 'text', (column) => column.notNull())
      .addColumn('expires', 'text', (column) => column.notNull())
      .execute();
    await db.schema.createIndex('session_of_token').on('session').columns(['token', 'created']).execute();
    await db.schema
      .createTable('audit')
      .addColumn('number', 'integer', (column) => column.notNull().primaryKey())
      .addColumn('at', 'text', (column) => column.notNull())
      .addColumn('actor', 'text', (column) => column.notNull())
      .addColumn('actor_id', 'text')
      .addColumn('act', 'text', (column) => column.notNull())
      .addColumn('target', 'text')
      .addColumn('detail', 'text')
      .execute();
    await db.schema
      .createTable('counter')
      .addColumn('name', keyText, (column) => column.notNull().primaryKey())
      .addColumn('value', 'integer', (column) => column.notNull())
      .execute();
  },
});
