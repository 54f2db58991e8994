import { hashOf } from '../store/secret-hash.ts';
import type { Change } from '../store/tables.ts';
import { type Doing, writeAct } from './audit.ts';
import type { Identified } from './identify.ts';

const dayMs = 24 * 60 * 60 * 1000;

/** A browser stays signed in for this long at most, and never longer than its token is taken. */
const longestSessionMs = 30 * dayMs;

/** So long the log tells of a sign-in; acts on the group stay. */
const signInsKeptMs = 365 * dayMs;

/** Everybody signs in again and again, and the log must not grow for ever. */
async function forgetOldSignIns(change: Change, now: string): Promise<void> {
  const before = new Date(Date.parse(now) - signInsKeptMs).toISOString();
  await change.deleteFrom('audit').where('act', '=', 'signed-in').where('at', '<', before).execute();
}

/** When a session that begins now ends. */
function endOf(now: string, tokenEnds: string | undefined): string {
  const end = new Date(Date.parse(now) + longestSessionMs).toISOString();
  return tokenEnds !== undefined && tokenEnds < end ? tokenEnds : end;
}

/** The sessions that are over, and of a token with too many the oldest, make room. */
async function makeRoom(change: Change, token: string, now: string, most: number): Promise<void> {
  await change.deleteFrom('session').where('expires', '<=', now).execute();
  const newest = await change
    .selectFrom('session')
    .select('secret_hash')
    .where('token', '=', token)
    .orderBy('created', 'desc')
    .execute();
  const old = newest.slice(most - 1).map((session) => session.secret_hash);
  if (old.length > 0) await change.deleteFrom('session').where('secret_hash', 'in', old).execute();
}

/** See {@link Members.signIn}. @returns when the session ends */
export async function addSession(
  change: Change,
  { caller, token }: Identified,
  { secret, now, most }: { readonly secret: string; readonly now: string; readonly most: number },
): Promise<string> {
  await makeRoom(change, token, now, most);
  const expires = endOf(now, caller.proof?.expires);
  await change
    .insertInto('session')
    .values({ secret_hash: hashOf(secret), token, created: now, expires })
    .execute();
  const doing: Doing = { by: { name: caller.name, id: caller.owner }, now };
  await forgetOldSignIns(change, now);
  await writeAct(change, doing, 'signed-in', { target: caller.name, detail: `with token ${token}` });
  return expires;
}

/** See {@link Members.signOut}. */
export async function removeSession(change: Change, secret: string): Promise<void> {
  await change.deleteFrom('session').where('secret_hash', '=', hashOf(secret)).execute();
}
