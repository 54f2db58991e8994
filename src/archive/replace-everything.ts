import { PostgresAdapter, sql } from 'kysely';
import { hasAdmin } from '../members/admins.ts';
import { type Doing, lockActs, writeAct } from '../members/audit.ts';
import type { Change } from '../store/tables.ts';
import { type Brought, insertLines } from './insert-lines.ts';
import type { ReadLine } from './read-archive.ts';

/** Rows that refer to others go before those. */
const tables = ['session', 'token', 'member', 'share', 'revision', 'item', 'shelf', 'audit'] as const;

/** Nobody else changes anything until the transaction ends. SQLite's transactions have that lock from the start. */
async function lockEverything(change: Change): Promise<void> {
  await lockActs(change);
  if (!(change.getExecutor().adapter instanceof PostgresAdapter)) return;
  await sql`lock table ${sql.join(tables.map((table) => sql.table(table)))} in exclusive mode`.execute(
    change,
  );
}

/** Whether nothing is kept, and nobody belongs to the group. */
async function isEmpty(change: Change): Promise<boolean> {
  const thing = await change.selectFrom('item').select('owner').limit(1).executeTakeFirst();
  const member = await change.selectFrom('member').select('id').limit(1).executeTakeFirst();
  return !thing && !member;
}

async function removeEverything(change: Change): Promise<void> {
  for (const table of tables) await change.deleteFrom(table).execute();
}

/** Thrown within a transaction that would bring a group that nobody could keep, so that it is undone. */
export class NobodyInArchive extends Error {
  override readonly name = 'NobodyInArchive';
}

/**
 * Puts the lines of an archive in the place of everything, all in the transaction that is at hand.
 * @param options `replace` allows that something was there; `needsAdmin` refuses an archive that has nobody to keep
 * the group
 * @throws {NobodyInArchive}
 */
export async function replaceEverything(
  change: Change,
  lines: AsyncIterable<ReadLine>,
  doing: Doing,
  { replace, needsAdmin }: { readonly replace: boolean; readonly needsAdmin: boolean },
): Promise<Brought | 'not-empty'> {
  await lockEverything(change);
  const wasEmpty = await isEmpty(change);
  if (!wasEmpty && !replace) return 'not-empty';
  await removeEverything(change);
  const { acts, ...brought } = await insertLines(change, lines);
  if (needsAdmin && !(await hasAdmin(change, doing.now)))
    throw new NobodyInArchive('the archive has no admin');
  await change.updateTable('counter').set({ value: acts }).where('name', '=', 'audit').execute();
  const { members, things, versions } = brought;
  const detail = `${members} members, ${things} things, ${versions} versions; ${wasEmpty ? 'nothing was there before' : 'in the place of what was there'}`;
  await writeAct(change, doing, 'restored', { detail });
  return brought;
}
