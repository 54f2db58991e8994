import { requireStorable } from './names.ts';
import { requireLimit } from './page-limit.ts';
import { currentOf, storedFrom } from './rows.ts';
import type { Kind, Listed, Page } from './store.ts';
import type { Database } from './tables.ts';

/** A page ends after the item that reaches this many bytes of JSON, so that large bodies do not fill the memory. */
const pageBytes = 2 * 1024 * 1024;

/** How many of the items, at least one, make a page. */
function countThatFit(sizes: readonly number[], limit: number): number {
  let bytes = 0;
  for (const [index, size] of sizes.slice(0, limit).entries()) {
    bytes += size;
    if (bytes > pageBytes && index > 0) return index;
  }
  return Math.min(sizes.length, limit);
}

/** See {@link Store.list}. Sizes first, then the bodies of those that fit. */
export async function listItems(db: Database, owner: string, kind: Kind, page: Page): Promise<Listed> {
  requireLimit(page.limit);
  if (page.after !== undefined && page.after !== '') requireStorable(page.after);
  const following = currentOf(db)
    .where('item.owner', '=', owner)
    .where('item.kind', '=', kind)
    .where('item.name', '>', page.after ?? '')
    .orderBy('item.name');
  const sized = await following
    .clearSelect()
    .select(['item.name', 'revision.bytes'])
    .limit(page.limit + 1)
    .execute();
  const count = countThatFit(
    sized.map(({ bytes }) => bytes),
    page.limit,
  );
  const last = sized[count - 1]?.name;
  if (last === undefined) return { items: [] };
  const rows = await following.where('item.name', '<=', last).limit(count).execute();
  // An item that came in between may have pushed the last one out of the page; the next page then begins with it.
  const end = rows.length === count ? rows.at(-1)?.name : last;
  const isLast = sized.length === count && end === last;
  return { items: rows.map(storedFrom), next: isLast ? undefined : end };
}
