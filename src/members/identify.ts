import { timingSafeEqual } from 'node:crypto';
import { hashOf } from '../store/secret-hash.ts';
import type { Change, Database } from '../store/tables.ts';
import type { Caller } from './caller.ts';
import { aliveTokens, readScopes } from './member-rows.ts';
import type { Credential } from './members.ts';

/** Who a credential shows, and when its token was used before. */
export interface Identified {
  readonly caller: Caller;
  readonly token: string;
  readonly lastUsed: string | null;
}

/** Tokens that are taken now, with their members. */
const takenTokens = (db: Database | Change, now: string) =>
  aliveTokens(db, now)
    .innerJoin('member', 'member.id', 'token.member')
    .where('member.active', '=', 1)
    .select([
      'member.id as owner',
      'member.name as name',
      'token.id as token',
      'token.secret_hash as hash',
      'token.scopes as scopes',
      'token.expires as expires',
      'token.last_used as lastUsed',
    ]);

const sameHash = (a: string, b: string): boolean =>
  a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));

/** What is shown ends with its token, and a cookie with its session, which is never later. */
const endOf = ({
  expires,
  sessionEnds,
}: {
  readonly expires: string | null;
  readonly sessionEnds?: string;
}) => sessionEnds ?? expires ?? undefined;

/** Reads the rows anew each time: what was revoked or suspended is refused at once. */
function rowOf(db: Database | Change, credential: Credential, now: string) {
  if (credential.by === 'token')
    return takenTokens(db, now).where('token.id', '=', credential.key.id).executeTakeFirst();
  return takenTokens(db, now)
    .innerJoin('session', 'session.token', 'token.id')
    .where('session.secret_hash', '=', hashOf(credential.secret))
    .where('session.expires', '>', now)
    .select('session.expires as sessionEnds')
    .executeTakeFirst();
}

/** See {@link Members.identify}. */
export async function identify(
  db: Database | Change,
  credential: Credential,
  now: string,
): Promise<Identified | undefined> {
  const row = await rowOf(db, credential, now);
  if (!row) return undefined;
  if (credential.by === 'token' && !sameHash(row.hash, hashOf(credential.key.secret))) return undefined;
  const { owner, name, token, scopes, lastUsed } = row;
  const proof = { by: credential.by, token, expires: endOf(row) };
  return { caller: { owner, name, scopes: new Set(readScopes(scopes)), proof }, token, lastUsed };
}
