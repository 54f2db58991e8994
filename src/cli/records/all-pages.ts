import type { Part } from '../../members/members.ts';
import { mostItemsPerPage, type Page } from '../../store/store.ts';

/** Every item of a list that comes in pages; undefined if there is no such list. */
export async function allPages<Item>(
  read: (page: Page) => Promise<Part<Item> | undefined>,
): Promise<readonly Item[] | undefined> {
  const all: Item[] = [];
  for (let after: string | undefined; ; ) {
    const part = await read({ limit: mostItemsPerPage, after });
    if (!part) return undefined;
    all.push(...part.items);
    after = part.next;
    if (after === undefined) return all;
  }
}
