import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { mostNameLength } from '../../../src/store/names.ts';
import { kinds, mostItemsPerPage, type Store } from '../../../src/store/store.ts';
import { BodyTooLarge, StoreUnavailable, UnstorableName } from '../../../src/store/store-errors.ts';
import type { Place } from './place.ts';
import { type Model, modelOf, stepModel, steps, takeStep } from './store-model.ts';

let owners = 0;
/** An owner whom no other test uses, so that all can share one database. */
const newOwner = () => `volunteer-${++owners}`;

const secretPattern = /^[\w-]{43}$/;

/** Every name of a kind, read page by page. */
async function namesByPages(
  store: Store,
  owner: string,
  limit: number,
  between: (page: number) => Promise<unknown> = async () => undefined,
): Promise<readonly string[]> {
  const names: string[] = [];
  let after: string | undefined;
  for (let page = 0; page < 1000; page++) {
    const { items, next } = await store.list(
      owner,
      'stock',
      after === undefined ? { limit } : { after, limit },
    );
    expect(items.length).toBeLessThanOrEqual(limit);
    names.push(...items.map(({ name }) => name));
    if (next === undefined) return names;
    after = next;
    await between(page);
  }
  throw new Error('the pages never end');
}

/** Ascending by code points, which is the order of UTF-8 bytes. */
const byCodePoints = (names: readonly string[]) =>
  names.toSorted((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));

/** Names that any database must keep apart and in order. */
const names = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 12 })
  .filter((name) => !name.includes('\0') && name.isWellFormed());

/**
 * What every store must do. Run it against each database.
 * @param makePlace gives a new, empty database
 */
export function storeContract(makePlace: () => Promise<Place>): void {
  let place: Place;
  let store: Store;

  beforeAll(async () => {
    place = await makePlace();
    store = place.open();
    await store.ready();
  });
  afterAll(() => place.discard());

  /** A database for one test alone. */
  async function ownPlace(): Promise<Place> {
    const own = await makePlace();
    onTestFinished(() => own.discard());
    return own;
  }

  describe('put and read', () => {
    test('give back what was stored, with its times and version', async () => {
      const owner = newOwner();
      const own = (await ownPlace()).open();
      const first = await own.put(owner, 'cutters', 'attic', { width: 12 }, 'any');
      expect(first).toEqual({
        outcome: 'created',
        stored: {
          owner,
          kind: 'cutters',
          name: 'attic',
          version: 1,
          body: { width: 12 },
          created: '2025-11-03T18:00:01.000Z',
          changed: '2025-11-03T18:00:01.000Z',
        },
      });
      const second = await own.put(owner, 'cutters', 'attic', { width: 24 }, 'any');
      expect(second).toEqual({
        outcome: 'replaced',
        stored: {
          ...first.stored,
          version: 2,
          body: { width: 24 },
          changed: '2025-11-03T18:00:02.000Z',
        },
      });
      expect(await own.read(owner, 'cutters', 'attic')).toEqual(second.stored);
    });

    test('of nothing is undefined', async () => {
      const owner = newOwner();
      expect(await store.read(owner, 'designs', 'none')).toBeUndefined();
      await store.put(owner, 'designs', 'some', 1, 'any');
      for (const version of [0, 2, -1, 1.5, 2 ** 31, Number.NaN])
        expect(await store.read(owner, 'designs', 'some', version)).toBeUndefined();
    });

    test('the same body again changes nothing', async () => {
      const owner = newOwner();
      const { stored } = await store.put(owner, 'designs', 'gift', { set: ['card'] }, 'any');
      for (const expected of ['any', 'present', { version: 1 }] as const)
        expect(await store.put(owner, 'designs', 'gift', { set: ['card'] }, expected)).toEqual({
          outcome: 'same',
          stored,
        });
      expect((await store.versions(owner, 'gift', { limit: 9 })).items).toHaveLength(1);
    });

    test('keep any JSON exactly, with the order of its members', async () => {
      const owner = newOwner();
      await fc.assert(
        fc.asyncProperty(fc.json({ maxDepth: 4 }), async (text) => {
          const body: unknown = JSON.parse(text);
          const written = JSON.stringify(body);
          const { stored } = await store.put(owner, 'stock', 'paper', body, 'any');
          expect(JSON.stringify(stored?.body)).toBe(written);
          expect(JSON.stringify((await store.read(owner, 'stock', 'paper'))?.body)).toBe(written);
        }),
        { numRuns: 60 },
      );
    });

    test.each([
      '"\\u0000"',
      '"\\ud800"',
      '{"__proto__":{"a":1}}',
      '{"2":0,"1":0,"b":0,"a":0}',
      '[1e308,5e-324,0.1,9007199254740991,123456789012345680000]',
      'null',
      'false',
      '""',
      '"\\"\'; drop table item; --"',
      '{"a":"é","b":"e\u0301","c":"灯台","d":"😀","e":"\u2028"}',
    ])('keep %s', async (text) => {
      const owner = newOwner();
      await store.put(owner, 'stock', 'paper', JSON.parse(text), 'absent');
      const read = await store.read(owner, 'stock', 'paper');
      expect(JSON.stringify(read?.body)).toBe(JSON.stringify(JSON.parse(text)));
    });

    test('refuse what is not JSON', async () => {
      const owner = newOwner();
      for (const body of [undefined, () => 1, Symbol('no')])
        await expect(store.put(owner, 'stock', 'paper', body, 'any')).rejects.toThrow(TypeError);
      expect(await store.read(owner, 'stock', 'paper')).toBeUndefined();
    });

    test('take a body as large as the limit, and not one byte more', async () => {
      const owner = newOwner();
      const small = place.open({ limits: { bodyBytes: 1000 } });
      const body = 'é'.repeat(499); // 998 bytes as UTF-8, and two quotation marks
      expect((await small.put(owner, 'stock', 'paper', body, 'any')).outcome).toBe('created');
      await expect(small.put(owner, 'stock', 'paper', `${body}a`, 'any')).rejects.toThrow(BodyTooLarge);
      expect((await small.read(owner, 'stock', 'paper'))?.body).toBe(body);
      const largest = '灯'.repeat((256 * 1024 - 3) / 3);
      await store.put(owner, 'designs', 'long', largest, 'any');
      expect((await store.read(owner, 'designs', 'long'))?.body).toBe(largest);
    });
  });

  describe('names', () => {
    test('in every script are kept apart', async () => {
      await fc.assert(
        fc.asyncProperty(fc.uniqueArray(names, { minLength: 2, maxLength: 8 }), async (some) => {
          const owner = newOwner();
          for (const name of some) await store.put(owner, 'stock', name, name, 'absent');
          for (const name of some) expect((await store.read(owner, 'stock', name))?.body).toBe(name);
          expect(await namesByPages(store, owner, 3)).toEqual(byCodePoints(some));
        }),
        { numRuns: 25 },
      );
    });

    test('that look alike are different names', async () => {
      const owner = newOwner();
      const alike = ['é', 'e\u0301', 'E', 'e', 'e ', ' e', 'ｅ', "e'", 'e%', 'e_', 'e/e', '.', '..'];
      for (const name of alike)
        expect((await store.put(owner, 'stock', name, name, 'absent')).outcome).toBe('created');
      expect(await namesByPages(store, owner, 4)).toEqual(byCodePoints(alike));
    });

    test('may be as long as the limit', async () => {
      const owner = '灯'.repeat(mostNameLength);
      const name = '台'.repeat(mostNameLength);
      expect((await store.put(owner, 'designs', name, 1, 'any')).outcome).toBe('created');
      expect(await store.share(owner, name)).toHaveProperty('secret');
      expect((await store.read(owner, 'designs', name))?.name).toBe(name);
    });

    test.each(['', '\0', 'a\0b', '\ud800', 'a\udc00', 'x'.repeat(mostNameLength + 1)])(
      'that no database keeps are refused to store, and are not there to read: %j',
      async (name) => {
        const owner = newOwner();
        await expect(store.put(owner, 'stock', name, 1, 'any')).rejects.toThrow(UnstorableName);
        await expect(store.put(name, 'stock', owner, 1, 'any')).rejects.toThrow(UnstorableName);
        expect(await store.read(owner, 'stock', name)).toBeUndefined();
        expect(await store.read(name, 'stock', owner)).toBeUndefined();
        expect(await store.list(name, 'stock', { limit: 1 })).toEqual({ items: [] });
        expect(await store.remove(owner, 'stock', name, 'any')).toBe('absent');
        expect(await store.remove(owner, 'stock', name, 'present')).toBe('stale');
        expect(await store.versions(owner, name, { limit: 1 })).toEqual({ items: [] });
        expect(await store.share(owner, name)).toBe('absent');
        expect(await store.shares(owner, name)).toEqual([]);
        expect(await store.unshare(owner, 'design', name)).toBe(false);
        expect(await store.shared(name, new Date(0))).toBeUndefined();
      },
    );
  });

  describe('list', () => {
    test('gives all of many names once, in order, page by page', async () => {
      const owner = newOwner();
      const many = Array.from({ length: 250 }, (_, index) => `paper ${index}`);
      for (const name of many) await store.put(owner, 'stock', name, name, 'any');
      for (const limit of [1, 7, 50, mostItemsPerPage])
        expect(await namesByPages(store, owner, limit)).toEqual(byCodePoints(many));
    });

    test('ends without a next where the last page is full', async () => {
      const owner = newOwner();
      for (const name of ['a', 'b', 'c', 'd']) await store.put(owner, 'stock', name, 1, 'any');
      const { next } = await store.list(owner, 'stock', { limit: 2 });
      expect(next).toBe('b');
      expect((await store.list(owner, 'stock', { after: 'b', limit: 2 })).next).toBeUndefined();
      expect(await store.list(owner, 'stock', { after: 'd', limit: 2 })).toEqual({ items: [] });
      expect(await store.list(newOwner(), 'stock', { limit: 2 })).toEqual({ items: [] });
    });

    test('stays steady while items come and go: none twice, none left out that was there all the time', async () => {
      const owner = newOwner();
      const steady = Array.from({ length: 30 }, (_, index) => `m${String(index).padStart(2, '0')}`);
      const passing = Array.from({ length: 30 }, (_, index) => `m${String(index).padStart(2, '0')}-`);
      for (const name of [...steady, ...passing]) await store.put(owner, 'stock', name, 1, 'any');
      const seen = await namesByPages(store, owner, 4, async (page) => {
        await store.put(owner, 'stock', `a${page}`, 1, 'any'); // before the page
        await store.put(owner, 'stock', `m${page}+`, 1, 'any'); // before, within or behind it
        await store.remove(owner, 'stock', `m${String(2 * page).padStart(2, '0')}-`, 'any');
        await store.remove(owner, 'stock', `m${String(29 - page).padStart(2, '0')}-`, 'any');
      });
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen).toEqual(byCodePoints(seen));
      expect(seen).toEqual(expect.arrayContaining(steady));
    });

    test('goes on after a name that is gone', async () => {
      const owner = newOwner();
      for (const name of ['a', 'b', 'c']) await store.put(owner, 'stock', name, 1, 'any');
      const { next = '' } = await store.list(owner, 'stock', { limit: 2 });
      await store.remove(owner, 'stock', next, 'any');
      const { items } = await store.list(owner, 'stock', { after: next, limit: 2 });
      expect(items.map(({ name }) => name)).toEqual(['c']);
    });

    test('ends a page of large bodies early, and still gives them all', async () => {
      const owner = newOwner();
      const large = 'x'.repeat(250_000);
      const many = Array.from({ length: 20 }, (_, index) => `large ${String(index).padStart(2, '0')}`);
      for (const name of many) await store.put(owner, 'stock', name, large, 'any');
      const { items } = await store.list(owner, 'stock', { limit: mostItemsPerPage });
      expect(items.length).toBe(8); // 2 MiB hold 8 of them
      expect(await namesByPages(store, owner, mostItemsPerPage)).toEqual(many);
    });

    test.each([0, -1, 1.5, mostItemsPerPage + 1, Number.NaN])('refuses a limit of %d', async (limit) => {
      await expect(store.list('anyone', 'stock', { limit })).rejects.toThrow(RangeError);
      await expect(store.versions('anyone', 'design', { limit })).rejects.toThrow(RangeError);
    });
  });

  describe('expectations', () => {
    test('keep an update from being lost', async () => {
      const owner = newOwner();
      await store.put(owner, 'designs', 'gift', 'first', 'any');
      await store.put(owner, 'designs', 'gift', 'hers', { version: 1 });
      const lost = await store.put(owner, 'designs', 'gift', 'his', { version: 1 });
      expect(lost.outcome).toBe('stale');
      expect(lost.stored).toMatchObject({ body: 'hers', version: 2 });
      expect((await store.read(owner, 'designs', 'gift'))?.body).toBe('hers');
      expect(await store.remove(owner, 'designs', 'gift', { version: 1 })).toBe('stale');
      expect(await store.remove(owner, 'designs', 'gift', { version: 2 })).toBe('removed');
    });

    test('of absence and presence', async () => {
      const owner = newOwner();
      expect(await store.put(owner, 'stock', 'paper', 1, 'present')).toEqual({ outcome: 'stale' });
      expect(await store.put(owner, 'stock', 'paper', 1, { version: 1 })).toEqual({ outcome: 'stale' });
      expect(await store.remove(owner, 'stock', 'paper', 'any')).toBe('absent');
      expect(await store.remove(owner, 'stock', 'paper', 'present')).toBe('stale');
      expect((await store.put(owner, 'stock', 'paper', 1, 'absent')).outcome).toBe('created');
      expect((await store.put(owner, 'stock', 'paper', 2, 'absent')).outcome).toBe('stale');
      expect((await store.put(owner, 'stock', 'paper', 2, 'present')).outcome).toBe('replaced');
    });

    test('never hold for a thing that was removed and stored again', async () => {
      const owner = newOwner();
      const { stored } = await store.put(owner, 'stock', 'paper', 1, 'any');
      await store.remove(owner, 'stock', 'paper', 'any');
      await store.put(owner, 'stock', 'paper', 2, 'any');
      const old = { version: stored?.version ?? 0 };
      expect((await store.put(owner, 'stock', 'paper', 3, old)).outcome).toBe('stale');
      expect(await store.remove(owner, 'stock', 'paper', old)).toBe('stale');
    });
  });

  describe('several writers at once', () => {
    test('that expect the same version: only one wins', async () => {
      const owner = newOwner();
      const other = place.open();
      await store.put(owner, 'designs', 'gift', 'first', 'any');
      const outcomes = await Promise.all(
        Array.from({ length: 12 }, (_, index) =>
          (index % 2 ? other : store).put(owner, 'designs', 'gift', index, { version: 1 }),
        ),
      );
      const won = outcomes.filter(({ outcome }) => outcome === 'replaced');
      expect(won).toHaveLength(1);
      expect(outcomes.filter(({ outcome }) => outcome === 'stale')).toHaveLength(11);
      expect(await other.read(owner, 'designs', 'gift')).toEqual(won[0]?.stored);
    });

    test('that expect absence, of the first thing that an owner keeps: only one wins', async () => {
      const owner = newOwner();
      const other = place.open();
      const outcomes = await Promise.all(
        Array.from({ length: 8 }, (_, index) =>
          (index % 2 ? other : store).put(owner, 'stock', 'paper', index, 'absent'),
        ),
      );
      expect(outcomes.map(({ outcome }) => outcome).toSorted()).toEqual([
        'created',
        ...Array.from({ length: 7 }, () => 'stale'),
      ]);
    });

    test('that expect nothing: every version is kept', async () => {
      const owner = newOwner();
      const other = place.open();
      await Promise.all(
        Array.from({ length: 20 }, (_, index) =>
          (index % 2 ? other : store).put(owner, 'designs', 'gift', index, 'any'),
        ),
      );
      const { items } = await store.versions(owner, 'gift', { limit: 100 });
      expect(items.map(({ version }) => version)).toEqual(
        Array.from({ length: 20 }, (_, index) => 20 - index),
      );
      const bodies = await Promise.all(
        items.map(async ({ version }) => (await other.read(owner, 'designs', 'gift', version))?.body),
      );
      expect(new Set(bodies).size).toBe(20);
    });

    test('never pass the limit together', async () => {
      const owner = newOwner();
      const stores = [0, 1].map(() => place.open({ limits: { items: 5 } }));
      const outcomes = await Promise.all(
        stores.flatMap((each, index) =>
          Array.from({ length: 6 }, (_, item) => each.put(owner, 'stock', `${index}-${item}`, 1, 'any')),
        ),
      );
      expect(outcomes.filter(({ outcome }) => outcome === 'created')).toHaveLength(5);
      expect(outcomes.filter(({ outcome }) => outcome === 'full')).toHaveLength(7);
      expect((await store.list(owner, 'stock', { limit: 100 })).items).toHaveLength(5);
    });

    test('that put and remove: nothing is left half done', async () => {
      const owner = newOwner();
      const other = place.open();
      await Promise.all(
        Array.from({ length: 30 }, (_, index) =>
          index % 3 === 2
            ? other.remove(owner, 'designs', 'gift', 'any')
            : (index % 2 ? other : store).put(owner, 'designs', 'gift', index, 'any'),
        ),
      );
      const read = await store.read(owner, 'designs', 'gift');
      const { items } = await store.versions(owner, 'gift', { limit: 100 });
      expect(items[0]?.version).toBe(read?.version);
    });
  });

  describe('several stores on one database', () => {
    test('see each other’s changes at once', async () => {
      const owner = newOwner();
      const other = place.open();
      for (let round = 0; round < 5; round++) {
        await store.put(owner, 'stock', 'paper', round, 'any');
        expect((await other.read(owner, 'stock', 'paper'))?.body).toBe(round);
        await other.put(owner, 'stock', 'paper', `${round}`, 'any');
        expect((await store.read(owner, 'stock', 'paper'))?.body).toBe(`${round}`);
      }
    });

    test('that start together on an empty database all work', async () => {
      const own = await ownPlace();
      const stores = Array.from({ length: 4 }, () => own.open());
      await Promise.all(stores.map((each) => each.ready()));
      await Promise.all(stores.map((each, index) => each.put('her', 'stock', `${index}`, 1, 'any')));
      for (const each of stores)
        expect((await each.list('her', 'stock', { limit: 9 })).items).toHaveLength(4);
    });

    test('keep what is there when the tables are already made', async () => {
      const own = await ownPlace();
      const first = own.open();
      const { stored } = await first.put('her', 'designs', 'gift', { a: 1 }, 'any');
      await first.close();
      const again = own.open();
      await again.ready();
      await again.ready();
      expect(await again.read('her', 'designs', 'gift')).toEqual(stored);
    });
  });

  describe('owners and kinds', () => {
    test('are apart', async () => {
      const [her, him] = [newOwner(), newOwner()];
      for (const kind of kinds) await store.put(her, kind, 'mine', kind, 'any');
      for (const kind of kinds) {
        expect(await store.read(him, kind, 'mine')).toBeUndefined();
        expect(await store.list(him, kind, { limit: 9 })).toEqual({ items: [] });
        expect(await store.remove(him, kind, 'mine', 'any')).toBe('absent');
        expect((await store.read(her, kind, 'mine'))?.body).toBe(kind);
      }
      expect(await store.versions(him, 'mine', { limit: 9 })).toEqual({ items: [] });
      expect(await store.share(him, 'mine')).toBe('absent');
      const share = await store.share(her, 'mine');
      if (typeof share === 'string') throw new Error(share);
      expect(await store.shares(him, 'mine')).toEqual([]);
      expect(await store.unshare(him, 'mine', share.id)).toBe(false);
      expect(await store.shared(share.secret, new Date(0))).toBeDefined();
    });

    test('follow a plain model through any run of changes', async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(steps(['', '*']), { minLength: 5, maxLength: 25 }),
          fc.integer({ min: 0, max: 1 }),
          async (run, odd) => {
            const prefix = newOwner();
            const other = place.open();
            let model: Model = new Map();
            for (const [index, step] of run.entries()) {
              const own = { ...step, owner: prefix + step.owner };
              const { outcome, version } = await takeStep(index % 2 === odd ? other : store, own);
              const next = stepModel(model, own, version);
              expect(outcome).toBe(next.outcome);
              model = next.model;
            }
            await other.close();
            expect(await modelOf(store, [prefix, `${prefix}*`])).toEqual(model);
          },
        ),
        { numRuns: 20 },
      );
    });
  });

  describe('versions', () => {
    test('of a design are all kept, newest first', async () => {
      const owner = newOwner();
      for (let edit = 1; edit <= 12; edit++) await store.put(owner, 'designs', 'gift', { edit }, 'any');
      const first = await store.versions(owner, 'gift', { limit: 5 });
      expect(first.items.map(({ version }) => version)).toEqual([12, 11, 10, 9, 8]);
      expect(first.next).toBe(8);
      const rest = await store.versions(owner, 'gift', { before: 8, limit: 7 });
      expect(rest.items.map(({ version }) => version)).toEqual([7, 6, 5, 4, 3, 2, 1]);
      expect(rest.next).toBeUndefined();
      for (let edit = 1; edit <= 12; edit++)
        expect((await store.read(owner, 'designs', 'gift', edit))?.body).toEqual({ edit });
    });

    test('keep the time of their change, and of the first one', async () => {
      const owner = newOwner();
      const first = (await store.put(owner, 'designs', 'gift', 1, 'any')).stored;
      const second = (await store.put(owner, 'designs', 'gift', 2, 'any')).stored;
      expect(await store.read(owner, 'designs', 'gift', 1)).toEqual(first);
      expect(second?.created).toBe(first?.created);
      expect((await store.versions(owner, 'gift', { limit: 9 })).items).toEqual([
        { version: 2, changed: second?.changed },
        { version: 1, changed: first?.changed },
      ]);
    });

    test('of other kinds are not kept', async () => {
      const owner = newOwner();
      await store.put(owner, 'stock', 'paper', 1, 'any');
      await store.put(owner, 'stock', 'paper', 2, 'any');
      expect(await store.read(owner, 'stock', 'paper', 1)).toBeUndefined();
      expect((await store.read(owner, 'stock', 'paper', 2))?.body).toBe(2);
    });

    test('go with their design', async () => {
      const owner = newOwner();
      await store.put(owner, 'designs', 'gift', 1, 'any');
      await store.put(owner, 'designs', 'gift', 2, 'any');
      await store.remove(owner, 'designs', 'gift', 'any');
      expect(await store.versions(owner, 'gift', { limit: 9 })).toEqual({ items: [] });
      await store.put(owner, 'designs', 'gift', 3, 'any');
      expect((await store.versions(owner, 'gift', { limit: 9 })).items).toHaveLength(1);
      expect(await store.read(owner, 'designs', 'gift', 1)).toBeUndefined();
    });
  });

  describe('limits', () => {
    test('on the count: full, until something is removed; replacing stays possible', async () => {
      const owner = newOwner();
      const small = place.open({ limits: { items: 2 } });
      await small.put(owner, 'stock', 'a', 1, 'any');
      await small.put(owner, 'stock', 'b', 1, 'any');
      expect(await small.put(owner, 'stock', 'c', 1, 'any')).toEqual({ outcome: 'full' });
      expect((await small.put(owner, 'stock', 'b', 2, 'any')).outcome).toBe('replaced');
      expect((await small.put(owner, 'cutters', 'c', 1, 'any')).outcome).toBe('created');
      expect((await small.put(newOwner(), 'stock', 'c', 1, 'any')).outcome).toBe('created');
      await small.remove(owner, 'stock', 'a', 'any');
      expect((await small.put(owner, 'stock', 'c', 1, 'any')).outcome).toBe('created');
    });

    test('on the bytes count every kept version, and what is removed no more', async () => {
      const owner = newOwner();
      const small = place.open({ limits: { bytes: 1000 } });
      const body = (letter: string) => letter.repeat(298); // 300 bytes
      for (const letter of ['a', 'b', 'c'])
        expect((await small.put(owner, 'designs', 'gift', body(letter), 'any')).outcome).not.toBe('full');
      const full = await small.put(owner, 'designs', 'gift', body('d'), 'any');
      expect(full.outcome).toBe('full');
      expect(full.stored?.body).toBe(body('c'));
      expect((await small.put(owner, 'designs', 'gift', 'x'.repeat(98), 'any')).outcome).toBe('replaced');
      await small.remove(owner, 'designs', 'gift', 'any');
      for (const name of ['a', 'b', 'c'])
        expect((await small.put(owner, 'designs', name, body(name), 'any')).outcome).toBe('created');
      for (let round = 0; round < 8; round++)
        expect((await small.put(owner, 'stock', 'paper', body(`${round}`), 'any')).outcome).not.toBe('full');
    });

    test('on share links: full, until one is revoked or expired', async () => {
      const owner = newOwner();
      const now = { time: '2025-11-03T18:00:00Z' };
      const small = place.open({ limits: { shares: 2 }, clock: () => new Date(now.time) });
      await small.put(owner, 'designs', 'gift', 1, 'any');
      const first = await small.share(owner, 'gift');
      await small.share(owner, 'gift', { expires: '2025-11-04T00:00:00Z' });
      expect(await small.share(owner, 'gift')).toBe('full');
      if (typeof first === 'string') throw new Error(first);
      await small.unshare(owner, 'gift', first.id);
      expect(await small.share(owner, 'gift')).toHaveProperty('secret');
      expect(await small.share(owner, 'gift')).toBe('full');
      now.time = '2025-11-04T00:00:00Z';
      expect(await small.share(owner, 'gift')).toHaveProperty('secret');
    });
  });

  describe('share links', () => {
    async function shared(expires?: string) {
      const owner = newOwner();
      const design = `gift of ${owner}`;
      await store.put(owner, 'designs', design, 'first', 'any');
      const share = await store.share(owner, design, { expires });
      if (typeof share === 'string') throw new Error(share);
      return { owner, design, ...share };
    }
    const now = new Date('2025-11-20T12:00:00Z');

    test('give the design as it is now, to whoever has the secret', async () => {
      const { owner, design, secret } = await shared();
      expect(secret).toMatch(secretPattern);
      expect(await store.shared(secret, now)).toEqual(await store.read(owner, 'designs', design));
      await store.put(owner, 'designs', design, 'second', 'any');
      expect((await place.open().shared(secret, now))?.body).toBe('second');
    });

    test('give nothing for a wrong secret', async () => {
      const { id, secret, design } = await shared();
      const last = secret.endsWith('A') ? 'B' : 'A';
      const wrong = [
        '',
        id,
        design,
        secret.slice(0, -1),
        `${secret}=`,
        ` ${secret}`,
        secret.toUpperCase(),
        `${last}${secret.slice(1)}`,
        '%',
        '\0',
      ];
      for (const each of wrong) expect(await store.shared(each, now), each).toBeUndefined();
      expect(await store.shared(secret, now)).toBeDefined();
    });

    test('end at the moment they expire', async () => {
      const { secret } = await shared('2025-11-20T13:00:00+01:00');
      expect(await store.shared(secret, new Date(now.getTime() - 1))).toBeDefined();
      expect(await store.shared(secret, now)).toBeUndefined();
    });

    test('refuse an end that is no time', async () => {
      await expect(shared('tomorrow')).rejects.toThrow(RangeError);
    });

    test('can be revoked one by one', async () => {
      const { owner, design, id, secret } = await shared();
      const other = await store.share(owner, design);
      if (typeof other === 'string') throw new Error(other);
      expect(await store.unshare(owner, design, id)).toBe(true);
      expect(await store.unshare(owner, design, id)).toBe(false);
      expect(await store.shared(secret, now)).toBeUndefined();
      expect(await store.shared(other.secret, now)).toBeDefined();
    });

    test('are listed without their secrets', async () => {
      const { owner, design, id, secret } = await shared();
      const later = await store.share(owner, design, { expires: '2025-12-24T18:00:00+01:00' });
      if (typeof later === 'string') throw new Error(later);
      const shares = await store.shares(owner, design);
      expect(shares.map((share) => share.id)).toEqual([id, later.id]);
      expect(shares.map(({ expires }) => expires)).toEqual([undefined, '2025-12-24T17:00:00.000Z']);
      expect(JSON.stringify(shares)).not.toContain(secret);
    });

    test('go with their design, also when it is stored again', async () => {
      const { owner, design, secret } = await shared();
      await store.remove(owner, 'designs', design, 'any');
      expect(await store.shared(secret, now)).toBeUndefined();
      await store.put(owner, 'designs', design, 'new', 'any');
      expect(await store.shared(secret, now)).toBeUndefined();
      expect(await store.shares(owner, design)).toEqual([]);
    });

    test('of nothing are refused', async () => {
      expect(await store.share(newOwner(), 'nothing')).toBe('absent');
    });

    test('all differ', async () => {
      const all = await Promise.all(Array.from({ length: 20 }, () => shared()));
      expect(new Set(all.map(({ secret }) => secret)).size).toBe(20);
      expect(new Set(all.map(({ id }) => id)).size).toBe(20);
    });
  });

  describe('close', () => {
    test('lets running changes end, and refuses later ones', async () => {
      const owner = newOwner();
      const other = place.open();
      await other.ready();
      const running = Array.from({ length: 10 }, (_, index) =>
        other.put(owner, 'stock', `${index}`, 1, 'any'),
      );
      const closed = other.close();
      await expect(other.read(owner, 'stock', '0')).rejects.toThrow(StoreUnavailable);
      expect((await Promise.all(running)).map(({ outcome }) => outcome)).toEqual(
        Array.from({ length: 10 }, () => 'created'),
      );
      await closed;
      await other.close();
      await expect(other.ready()).rejects.toThrow('stopping');
      expect((await store.list(owner, 'stock', { limit: 20 })).items).toHaveLength(10);
    });

    test('of a store that was never used makes nothing', async () => {
      const own = await ownPlace();
      await own.open().close();
      await expect(own.open().ready()).resolves.toBeUndefined();
    });
  });
}
