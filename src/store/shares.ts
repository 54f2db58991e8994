import { randomBytes } from 'node:crypto';
import { sql } from 'kysely';
import { currentOf, currentRow, type Key, lockShelf, storedFrom } from './rows.ts';
import { hashOf } from './secret-hash.ts';
import type { NewShare, Share, Stored } from './store.ts';
import { isStorable } from './stored-time.ts';
import type { Change, Database } from './tables.ts';

/** A design's key. */
export const designKey = (owner: string, name: string): Key => ({ owner, kind: 'designs', name });

/** A new link with a secret of 256 random bits. */
export const randomShare = (): NewShare => ({
  id: randomBytes(9).toString('base64url'),
  secret: randomBytes(32).toString('base64url'),
});

/** @throws {RangeError} for a text that is no time that can be stored */
export function timeFrom(text: string): string {
  const time = new Date(text);
  if (!isStorable(time)) throw new RangeError('the year has more than four digits');
  return time.toISOString();
}

/** See {@link Store.share}. Expired links make room for new ones. */
export async function addShare(
  change: Change,
  design: Key,
  { id, secret }: NewShare,
  {
    expires,
    now,
    most,
  }: { readonly expires: string | undefined; readonly now: string; readonly most: number },
): Promise<'added' | 'absent' | 'full'> {
  const { owner, kind, name } = design;
  await lockShelf(change, owner, kind);
  if (!(await currentRow(change, design))) return 'absent';
  const { alive } = await change
    .selectFrom('share')
    .select(sql<number>`cast(count(*) as integer)`.as('alive'))
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .where((row) => row.or([row('expires', 'is', null), row('expires', '>', now)]))
    .executeTakeFirstOrThrow();
  if (alive >= most) return 'full';
  await change
    .deleteFrom('share')
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .where('expires', '<=', now)
    .execute();
  await change
    .insertInto('share')
    .values({ id, owner, kind, name, secret_hash: hashOf(secret), created: now, expires: expires ?? null })
    .execute();
  return 'added';
}

/** See {@link Store.shared}. A link of a member who is suspended gives nothing meanwhile. */
export async function readShared(db: Database, secret: string, now: Date): Promise<Stored | undefined> {
  const row = await currentOf(db)
    .innerJoin('share', (join) =>
      join
        .onRef('share.owner', '=', 'item.owner')
        .onRef('share.kind', '=', 'item.kind')
        .onRef('share.name', '=', 'item.name'),
    )
    .select('share.expires')
    .where('share.secret_hash', '=', hashOf(secret))
    // at home there is no member
    .where(({ exists, not, selectFrom }) =>
      not(
        exists(
          selectFrom('member')
            .select('member.id')
            .whereRef('member.id', '=', 'share.owner')
            .where('member.active', '=', 0),
        ),
      ),
    )
    .executeTakeFirst();
  if (!row || (row.expires !== null && Date.parse(row.expires) <= now.getTime())) return undefined;
  return storedFrom(row);
}

/** See {@link Store.shares}. */
export async function listShares(db: Database, { owner, kind, name }: Key): Promise<readonly Share[]> {
  const rows = await db
    .selectFrom('share')
    .select(['id', 'created', 'expires'])
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .orderBy('created')
    .orderBy('id')
    .execute();
  return rows.map(({ id, created, expires }) => ({
    id,
    created,
    ...(expires === null ? {} : { expires }),
  }));
}

/** See {@link Store.unshare}. */
export async function removeShare(change: Change, { owner, kind, name }: Key, id: string): Promise<boolean> {
  const { numDeletedRows } = await change
    .deleteFrom('share')
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .where('id', '=', id)
    .executeTakeFirstOrThrow();
  return numDeletedRows > 0n;
}
