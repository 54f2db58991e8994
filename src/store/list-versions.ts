import { requireLimit } from './page-limit.ts';
import type { VersionPage, Versions } from './store.ts';
import type { Database } from './tables.ts';

/** See {@link Store.versions}. */
export async function listVersions(
  db: Database,
  owner: string,
  design: string,
  { before, limit }: VersionPage,
): Promise<Versions> {
  requireLimit(limit);
  const rows = await db
    .selectFrom('revision')
    .select(['version', 'changed'])
    .where('owner', '=', owner)
    .where('kind', '=', 'designs')
    .where('name', '=', design)
    .$if(before !== undefined, (query) => query.where('version', '<', before ?? 0))
    .orderBy('version', 'desc')
    .limit(limit + 1)
    .execute();
  const items = rows.slice(0, limit).map(({ version, changed }) => ({ version, changed }));
  const last = items.at(-1)?.version;
  return { items, next: rows.length > limit ? last : undefined };
}
