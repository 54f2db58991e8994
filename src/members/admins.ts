import type { Change, Database } from '../store/tables.ts';
import { aliveTokens } from './member-rows.ts';

/** See {@link Members.hasAdmin}. No scope's name is part of another's. */
export async function hasAdmin(db: Database | Change, now: string): Promise<boolean> {
  const row = await aliveTokens(db, now)
    .innerJoin('member', 'member.id', 'token.member')
    .select('token.id')
    .where('member.active', '=', 1)
    .where('token.scopes', 'like', '%admin%')
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

/** Thrown within a transaction that would leave the group without anybody to keep it, so that it is undone. */
export class NobodyLeft extends Error {
  override readonly name = 'NobodyLeft';
}

/**
 * Does work that may take the group's last admin away. The acts are locked, so no other such work runs meanwhile.
 * @throws {NobodyLeft} if there was one and now is none
 */
export async function keepingAnAdmin<Result>(
  change: Change,
  now: string,
  work: () => Promise<Result>,
): Promise<Result> {
  const had = await hasAdmin(change, now);
  const result = await work();
  if (had && !(await hasAdmin(change, now))) throw new NobodyLeft('the group would have no admin');
  return result;
}
