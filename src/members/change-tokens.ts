import { sql } from 'kysely';
import { hashOf } from '../store/secret-hash.ts';
import type { Change } from '../store/tables.ts';
import { keepingAnAdmin } from './admins.ts';
import { type Doing, lockActs, writeAct } from './audit.ts';
import type { Scope } from './caller.ts';
import { aliveTokens, findMember, readScopes, tokenFrom, writeScopes } from './member-rows.ts';
import type { MemberLimits, NewToken, TokenWish } from './members.ts';
import { type TokenKey, tokenText } from './secrets.ts';

/** A token in words, for the audit log; nothing of its secret, and nothing that its maker wrote. */
const words = (id: string, scopes: string, expires: string | null) =>
  `${id}: ${scopes}${expires === null ? '' : `, until ${expires}`}`;

/** Adds a token to a member who is there; the acts are locked. */
export async function insertToken(
  change: Change,
  doing: Doing,
  member: { readonly id: string; readonly name: string },
  { key, wish }: { readonly key: TokenKey; readonly wish: TokenWish },
): Promise<NewToken> {
  const row = {
    id: key.id,
    member: member.id,
    secret_hash: hashOf(key.secret),
    scopes: writeScopes(wish.scopes),
    created: doing.now,
    expires: wish.expires ?? null,
    last_used: null,
    revoked: null,
    note: wish.note ?? null,
  };
  await change.insertInto('token').values(row).execute();
  const detail = words(row.id, row.scopes, row.expires);
  await writeAct(change, doing, 'token-made', { target: member.name, detail });
  return { ...tokenFrom(row), text: tokenText(key) };
}

/** Revoked and expired tokens make room, the oldest first. */
async function dropOldest(change: Change, member: string, now: string, most: number): Promise<void> {
  const dead = await change
    .selectFrom('token')
    .select('id')
    .where('member', '=', member)
    .where((token) => token.or([token('revoked', 'is not', null), token('expires', '<=', now)]))
    .orderBy('id', 'desc')
    .execute();
  const ids = dead.slice(most).map(({ id }) => id);
  if (ids.length > 0) await change.deleteFrom('token').where('id', 'in', ids).execute();
}

/** See {@link Members.makeToken}. */
export async function addToken(
  change: Change,
  doing: Doing,
  name: string,
  { key, wish, limits }: { readonly key: TokenKey; readonly wish: TokenWish; readonly limits: MemberLimits },
): Promise<NewToken | 'absent' | 'full'> {
  await lockActs(change);
  const member = await findMember(change, name);
  if (!member) return 'absent';
  const { alive } = await aliveTokens(change, doing.now)
    .select(sql<number>`cast(count(*) as integer)`.as('alive'))
    .where('token.member', '=', member.id)
    .executeTakeFirstOrThrow();
  if (alive >= limits.tokens) return 'full';
  await dropOldest(change, member.id, doing.now, limits.deadTokens);
  return insertToken(change, doing, member, { key, wish });
}

/** See {@link Members.revoke}. */
export async function revokeToken(
  change: Change,
  doing: Doing,
  id: string,
  { member, within }: { readonly member?: string; readonly within?: ReadonlySet<Scope> },
): Promise<'revoked' | 'absent' | 'beyond'> {
  await lockActs(change);
  const token = await change
    .selectFrom('token')
    .innerJoin('member', 'member.id', 'token.member')
    .select(['token.scopes', 'token.expires', 'token.revoked', 'member.name as memberName'])
    .where('token.id', '=', id)
    .executeTakeFirst();
  if (!token || (member !== undefined && member !== token.memberName)) return 'absent';
  if (within && !readScopes(token.scopes).every((scope) => within.has(scope))) return 'beyond';
  if (token.revoked !== null) return 'revoked';
  await keepingAnAdmin(change, doing.now, () =>
    change.updateTable('token').set({ revoked: doing.now }).where('id', '=', id).execute(),
  );
  await change.deleteFrom('session').where('token', '=', id).execute();
  const detail = words(id, token.scopes, token.expires);
  await writeAct(change, doing, 'token-revoked', { target: token.memberName, detail });
  return 'revoked';
}
