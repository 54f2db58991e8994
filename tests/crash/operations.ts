import type { Kind, Store } from '../../src/store/store.ts';
import { type Model, modelOf, type Step, stepModel } from '../src/store/store-model.ts';

export const owner = 'keeper';

/** A whole number below `below`, the same for the same words (FNV-1a, 32 bit). */
function chance(below: number, ...words: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const byte of Buffer.from(words.join(' '))) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  // the low bits of FNV depend on the last bytes alone
  return ((hash ^ (hash >>> 15)) >>> 0) % below;
}

const names = ['lamp', 'fog bell', 'keeper’s log', '灯台', 'tide', 'stairs'];
const sizes = [10, 3000, 20_000, 200_000];

/** The change number `number` of a run: some of a page, some of many pages. */
export function operation(seed: number, number: number): Step {
  const kind: Kind = chance(3, seed, number, 'kind') === 0 ? 'stock' : 'designs';
  const name = names[chance(names.length, seed, number, 'name')] ?? '';
  if (chance(4, seed, number, 'does') === 0) return { does: 'remove', owner, kind, name, expected: 'any' };
  const size = sizes[chance(sizes.length, seed, number, 'size')] ?? 0;
  return { does: 'put', owner, kind, name, body: { number, filling: 'x'.repeat(size) }, expected: 'any' };
}

/** What the changes `from` up to, but without, `to` make of a model. */
export function afterOperations(model: Model, seed: number, from: number, to: number): Model {
  let after = model;
  for (let number = from; number < to; number++)
    after = stepModel(after, operation(seed, number), number + 1).model;
  return after;
}

/** What is stored under each name, its versions oldest first; the numbers of versions are the store's affair. */
const contents = (model: Model): string =>
  JSON.stringify([...model.values()].map(({ key, bodies }) => [key, [...bodies.values()]]).toSorted());

/**
 * Holds a store to what was acknowledged: it has all of that, and of the one change that may have been running
 * either all or nothing.
 * @returns how many changes it holds; undefined if it holds something else
 */
export async function countHeld(
  store: Store,
  before: Model,
  seed: number,
  from: number,
  acknowledged: number,
): Promise<number | undefined> {
  const held = contents(await modelOf(store, [owner]));
  return [acknowledged, acknowledged + 1].find(
    (to) => contents(afterOperations(before, seed, from, to)) === held,
  );
}
