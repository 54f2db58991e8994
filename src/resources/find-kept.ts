import { stockForSpec } from '../../shared/kept/kept-stock.ts';
import { startingConvention } from '../../shared/kept/starting-conventions.ts';
import type { NamedKind } from '../../shared/spec/names-in-spec.ts';
import type { Store } from '../store/store.ts';

/** Looks up what a name in a spec stands for, as the spec may hold it; undefined for a name that stands for nothing. */
export type FindKept = (kind: NamedKind, name: string) => Promise<unknown>;

/** The starting conventions alone. */
export const findStarting: FindKept = async (kind, name) =>
  kind === 'conventions' ? startingConvention(name)?.convention : undefined;

/** What an owner keeps, and the starting conventions where nothing of the owner's has the name. */
export const findOwn =
  (store: Pick<Store, 'read'>, owner: string): FindKept =>
  async (kind, name) => {
    const kept = await store.read(owner, kind, name);
    if (!kept) return findStarting(kind, name);
    return kind === 'stock' ? stockForSpec(kept.body) : kept.body;
  };
