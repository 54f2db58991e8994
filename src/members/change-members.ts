import { sql } from 'kysely';
import type { Change } from '../store/tables.ts';
import { keepingAnAdmin } from './admins.ts';
import { type Doing, lockActs, writeAct } from './audit.ts';
import { findMember, memberFrom } from './member-rows.ts';
import type { Member } from './members.ts';

/** Adds a member without a token; the acts are locked. */
export async function insertMember(
  change: Change,
  doing: Doing,
  { id, name, active, most }: { id: string; name: string; active: boolean; most: number },
): Promise<Member | 'full'> {
  const { count } = await change
    .selectFrom('member')
    .select(sql<number>`cast(count(*) as integer)`.as('count'))
    .executeTakeFirstOrThrow();
  if (count >= most) return 'full';
  const row = { id, name, active: active ? 1 : 0, created: doing.now };
  await change.insertInto('member').values(row).execute();
  await writeAct(change, doing, 'member-added', { target: name, ...(active ? {} : { detail: 'suspended' }) });
  return memberFrom(row);
}

/** See {@link Members.put}. */
export async function putMember(
  change: Change,
  doing: Doing,
  { id, name, active, most }: { id: string; name: string; active: boolean; most: number },
): Promise<{ outcome: 'added' | 'changed' | 'same'; member: Member } | 'full'> {
  await lockActs(change);
  const row = await findMember(change, name);
  if (!row) {
    const member = await insertMember(change, doing, { id, name, active, most });
    return member === 'full' ? member : { outcome: 'added', member };
  }
  const current = memberFrom(row);
  if (current.active === active) return { outcome: 'same', member: current };
  await keepingAnAdmin(change, doing.now, async () => {
    await change
      .updateTable('member')
      .set({ active: active ? 1 : 0 })
      .where('id', '=', row.id)
      .execute();
    if (!active) await signOutEverywhere(change, row.id);
  });
  await writeAct(change, doing, active ? 'member-resumed' : 'member-suspended', { target: name });
  return { outcome: 'changed', member: { ...current, active } };
}

/** A suspended member's browsers stay signed out when the member is back. */
const signOutEverywhere = (change: Change, member: string) =>
  change
    .deleteFrom('session')
    .where('token', 'in', (query) => query.selectFrom('token').select('id').where('member', '=', member))
    .execute();

/** See {@link Members.remove}. Tokens and sessions go with their member; revisions and share links with their items. */
export async function removeMember(
  change: Change,
  doing: Doing,
  name: string,
): Promise<'removed' | 'absent'> {
  await lockActs(change);
  const member = await findMember(change, name);
  if (!member) return 'absent';
  await keepingAnAdmin(change, doing.now, () =>
    change.deleteFrom('member').where('id', '=', member.id).execute(),
  );
  const { numDeletedRows } = await change
    .deleteFrom('item')
    .where('owner', '=', member.id)
    .executeTakeFirstOrThrow();
  await change.deleteFrom('shelf').where('owner', '=', member.id).execute();
  await writeAct(change, doing, 'member-removed', { target: name, detail: `with ${numDeletedRows} things` });
  return 'removed';
}
