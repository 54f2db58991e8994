import { holds } from './expectation.ts';
import type { Limits } from './limits.ts';
import { listItems } from './list-items.ts';
import { listVersions } from './list-versions.ts';
import { isStorable, requireStorable } from './names.ts';
import { putItem, writeBody } from './put-item.ts';
import { removeItem } from './remove-item.ts';
import { revisionsOf, storedFrom } from './rows.ts';
import type { Runner } from './runner.ts';
import { addShare, designKey, listShares, readShared, removeShare, timeFrom } from './shares.ts';
import type { Clock, NewShare, Store } from './store.ts';

/** Bounds of PostgreSQL's `integer`, in which versions are kept. */
const isVersion = (version: number) => Number.isInteger(version) && version > 0 && version < 2 ** 31;

/** The store on SQL, the same for every database that the runner may hold. */
export function createSqlStore(
  runner: Runner,
  clock: Clock,
  limits: Limits,
  newShare: () => NewShare,
): Store {
  const now = () => clock().toISOString();

  return Object.freeze<Store>({
    async list(owner, kind, page) {
      if (!isStorable(owner)) return { items: [] };
      return runner.read((db) => listItems(db, owner, kind, page));
    },

    async read(owner, kind, name, version) {
      if (!isStorable(owner) || !isStorable(name)) return undefined;
      if (version !== undefined && !isVersion(version)) return undefined;
      const row = await runner.read((db) => {
        const query = revisionsOf(db)
          .where('item.owner', '=', owner)
          .where('item.kind', '=', kind)
          .where('item.name', '=', name);
        return (
          version === undefined
            ? query.whereRef('revision.version', '=', 'item.version')
            : query.where('revision.version', '=', version)
        ).executeTakeFirst();
      });
      return row && storedFrom(row);
    },

    async put(owner, kind, name, body, expected) {
      requireStorable(owner, name);
      const written = writeBody(body, limits.bodyBytes);
      return runner.change((change) =>
        putItem(change, { owner, kind, name }, written, expected, { limits, now: now() }),
      );
    },

    async remove(owner, kind, name, expected) {
      if (!isStorable(owner) || !isStorable(name)) return holds(expected, undefined) ? 'absent' : 'stale';
      return runner.change((change) => removeItem(change, { owner, kind, name }, expected));
    },

    async versions(owner, design, page) {
      if (!isStorable(owner) || !isStorable(design)) return { items: [] };
      return runner.read((db) => listVersions(db, owner, design, page));
    },

    async share(owner, design, options = {}) {
      if (!isStorable(owner) || !isStorable(design)) return 'absent';
      const expires = options.expires === undefined ? undefined : timeFrom(options.expires);
      const share = newShare();
      const outcome = await runner.change((change) =>
        addShare(change, designKey(owner, design), share, { expires, now: now(), most: limits.shares }),
      );
      return outcome === 'added' ? share : outcome;
    },

    shared: (secret, at) => runner.read((db) => readShared(db, secret, at)),

    async shares(owner, design) {
      if (!isStorable(owner) || !isStorable(design)) return [];
      return runner.read((db) => listShares(db, designKey(owner, design)));
    },

    async unshare(owner, design, id) {
      if (![owner, design, id].every(isStorable)) return false;
      return runner.change((change) => removeShare(change, designKey(owner, design), id));
    },

    async ready() {
      await runner.read((db) => db.selectFrom('shelf').select('owner').limit(1).execute());
    },

    close: () => runner.close(),
  });
}
