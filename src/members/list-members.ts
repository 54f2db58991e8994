import { requireLimit } from '../store/page-limit.ts';
import type { Page } from '../store/store.ts';
import type { Database } from '../store/tables.ts';
import { findMember, memberFrom, tokenFrom } from './member-rows.ts';
import type { Member, Part, Token } from './members.ts';

function partOf<Item>(found: readonly Item[], limit: number, cursorOf: (item: Item) => string): Part<Item> {
  const items = found.slice(0, limit);
  const last = items.at(-1);
  return { items, ...(found.length > limit && last !== undefined ? { next: cursorOf(last) } : {}) };
}

/** See {@link Members.list}. */
export async function listMembers(db: Database, { after, limit }: Page): Promise<Part<Member>> {
  requireLimit(limit);
  const rows = await db
    .selectFrom('member')
    .selectAll()
    .where('name', '>', after ?? '')
    .orderBy('name')
    .limit(limit + 1)
    .execute();
  return partOf(rows.map(memberFrom), limit, ({ name }) => name);
}

/** See {@link Members.tokens}. */
export async function listTokens(
  db: Database,
  name: string,
  { after, limit }: Page,
): Promise<Part<Token> | undefined> {
  requireLimit(limit);
  const member = await findMember(db, name);
  if (!member) return undefined;
  const rows = await db
    .selectFrom('token')
    .selectAll()
    .where('member', '=', member.id)
    .where('id', '>', after ?? '')
    .orderBy('id')
    .limit(limit + 1)
    .execute();
  return partOf(rows.map(tokenFrom), limit, ({ id }) => id);
}
