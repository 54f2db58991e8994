import type { Selectable } from 'kysely';
import type { Change, Database, Tables } from '../store/tables.ts';
import { type Scope, scopes } from './caller.ts';
import type { Member, Token } from './members.ts';

/** A member from its row. */
export const memberFrom = ({ active, ...rest }: Selectable<Tables['member']>): Member => ({
  ...rest,
  active: active === 1,
});

/** Scopes as they are stored: in their order, with commas between them. */
export const writeScopes = (wanted: Iterable<Scope>): string => {
  const set = new Set(wanted);
  return scopes.filter((scope) => set.has(scope)).join(',');
};

export const readScopes = (text: string): readonly Scope[] => {
  const words = new Set(text.split(','));
  return scopes.filter((scope) => words.has(scope));
};

/** A token from its row. */
export const tokenFrom = (row: Selectable<Tables['token']>): Token => ({
  id: row.id,
  scopes: readScopes(row.scopes),
  created: row.created,
  ...(row.expires === null ? {} : { expires: row.expires }),
  ...(row.last_used === null ? {} : { lastUsed: row.last_used }),
  ...(row.revoked === null ? {} : { revoked: row.revoked }),
  ...(row.note === null ? {} : { note: row.note }),
});

export const findMember = (db: Database | Change, name: string) =>
  db.selectFrom('member').selectAll().where('name', '=', name).executeTakeFirst();

/** Tokens that are taken at that time, if their members are active. Times are texts of one form, which sort as they pass. */
export const aliveTokens = (db: Database | Change, now: string) =>
  db
    .selectFrom('token')
    .where('token.revoked', 'is', null)
    .where((token) => token.or([token('token.expires', 'is', null), token('token.expires', '>', now)]));
