import { revisionsOf } from '../store/rows.ts';
import type { Kind } from '../store/store.ts';
import type { Change } from '../store/tables.ts';
import { inPages } from './pages.ts';

/** Bodies may be large, so few are held at once. */
const revisionsPerPage = 16;
const rowsPerPage = 200;

interface Shelf {
  readonly owner: string;
  readonly kind: Kind;
}

type RowOf<Read extends (...given: never[]) => Promise<readonly unknown[]>> = Awaited<
  ReturnType<Read>
>[number];

/** Every member, by name. */
export const memberRows = (db: Change) => db.selectFrom('member').selectAll().orderBy('name').execute();

/** The tokens of a member, oldest first. */
export const tokenRows = (db: Change, member: string) =>
  db.selectFrom('token').selectAll().where('member', '=', member).orderBy('id').execute();

const shelfPage = (db: Change, last: Shelf | undefined) =>
  db
    .selectFrom('shelf')
    .select(['owner', 'kind', 'highest_removed'])
    .$if(last !== undefined, (query) =>
      query.where(({ eb, refTuple, tuple }) =>
        eb(refTuple('owner', 'kind'), '>', tuple(last?.owner ?? '', last?.kind ?? 'conventions')),
      ),
    )
    .orderBy('owner')
    .orderBy('kind')
    .limit(rowsPerPage)
    .execute();

/** Every shelf, by owner and kind. */
export const shelfRows = (db: Change) =>
  inPages((last: RowOf<typeof shelfPage> | undefined) => shelfPage(db, last));

const revisionPage = (
  db: Change,
  { owner, kind }: Shelf,
  last: { readonly name: string; readonly version: number } | undefined,
) =>
  revisionsOf(db)
    .select('item.version as current')
    .where('item.owner', '=', owner)
    .where('item.kind', '=', kind)
    .$if(last !== undefined, (query) =>
      query.where(({ eb, refTuple, tuple }) =>
        eb(refTuple('item.name', 'revision.version'), '>', tuple(last?.name ?? '', last?.version ?? 0)),
      ),
    )
    .orderBy('item.name')
    .orderBy('revision.version')
    .limit(revisionsPerPage)
    .execute();

/** Every revision on a shelf with its thing, by name and version. */
export const revisionRows = (db: Change, shelf: Shelf) =>
  inPages((last: RowOf<typeof revisionPage> | undefined) => revisionPage(db, shelf, last));

/** The share links of a thing, oldest first. */
export const shareRows = (db: Change, { owner, kind }: Shelf, name: string) =>
  db
    .selectFrom('share')
    .select(['id', 'secret_hash', 'created', 'expires'])
    .where('owner', '=', owner)
    .where('kind', '=', kind)
    .where('name', '=', name)
    .orderBy('created')
    .orderBy('id')
    .execute();

const actPage = (db: Change, after: number) =>
  db
    .selectFrom('audit')
    .selectAll()
    .where('number', '>', after)
    .orderBy('number')
    .limit(rowsPerPage)
    .execute();

/** The whole audit log, oldest first. */
export const actRows = (db: Change) =>
  inPages((last: RowOf<typeof actPage> | undefined) => actPage(db, last?.number ?? 0));
