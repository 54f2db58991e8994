import { Writable } from 'node:stream';
import fc from 'fast-check';
import { beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { commandLine } from '../../../src/members/audit.ts';
import { scopes } from '../../../src/members/caller.ts';
import { readTokenText } from '../../../src/members/secrets.ts';
import type { Records } from '../../../src/records.ts';
import { kinds } from '../../../src/store/store.ts';
import type { RecordsPlace } from '../members/records-place.ts';
import { setClock } from '../members/set-clock.ts';
import { exported, linesOf, sealed, sourceOf, textSink } from './archive-text.ts';

const fresh = { replace: false, needsAdmin: false } as const;
const replacing = { replace: true, needsAdmin: false } as const;

/** Fills a database with one of everything. @returns what shows who is who */
export async function fill({ members, store }: Records) {
  const ada = await members.add(commandLine, 'Ada', { scopes, note: 'first' });
  const bo = await members.add(commandLine, 'Bo', { scopes: ['read'], expires: '2026-02-01T00:00:00.000Z' });
  if (typeof ada === 'string' || typeof bo === 'string') throw new Error('not added');
  await members.put(commandLine, 'Bo', { active: false });
  const owner = ada.member.id;
  for (let n = 1; n < 40; n++) await store.put(owner, 'designs', 'gift', { n, text: '灯台 "\\\n' }, 'any');
  for (let n = 1; n < 25; n++) await store.put(owner, 'stock', `paper ${n}`, { n }, 'any');
  await store.put(owner, 'cutters', 'attic', null, 'any');
  await store.put(owner, 'cutters', 'gone', 1, 'any');
  await store.remove(owner, 'cutters', 'gone', 'any');
  await store.put('home', 'conventions', 'mine', [1, 1.5, 'x'], 'any');
  const share = await store.share(owner, 'gift', { expires: '2026-03-01T00:00:00.000Z' });
  const open = await store.share(owner, 'gift');
  if (typeof share === 'string' || typeof open === 'string') throw new Error('not shared');
  const key = readTokenText(ada.token.text);
  if (!key) throw new Error('no token');
  return { owner, key, share, open };
}

/** Everything that can be read, for comparison. */
export async function everything({ store, members }: Records, owner: string) {
  const things = [];
  for (const each of [owner, 'home'])
    for (const kind of kinds) things.push((await store.list(each, kind, { limit: 100 })).items);
  const old = await store.read(owner, 'designs', 'gift', 3);
  const tokens = [];
  for (const name of ['Ada', 'Bo']) tokens.push(await members.tokens(name, { limit: 100 }));
  return {
    things,
    old,
    versions: await store.versions(owner, 'gift', { limit: 100 }),
    shares: await store.shares(owner, 'gift'),
    members: await members.list({ limit: 100 }),
    tokens,
  };
}

/** What archives of every database must do. @param makePlace gives a new, empty database */
export function archiveContract(makePlace: () => Promise<RecordsPlace>): void {
  const clock = setClock();
  let records: Records;

  async function newRecords(): Promise<Records> {
    const place = await makePlace();
    onTestFinished(() => place.discard());
    return place.open({ clock });
  }

  beforeEach(async () => {
    records = await newRecords();
  });

  describe('export and restore', () => {
    test('bring everything to another database, with its tokens, links, versions and counts', async () => {
      const { owner, key, share, open } = await fill(records);
      const text = await exported(records.archive);
      const other = await newRecords();
      expect(await other.archive.restore(commandLine, sourceOf(text), fresh)).toEqual({
        members: 2,
        things: 27,
        versions: 65,
      });
      expect(await everything(other, owner)).toEqual(await everything(records, owner));
      expect(await other.members.identify({ by: 'token', key })).toMatchObject({ owner, name: 'Ada' });
      for (const { secret } of [share, open])
        expect(await other.store.shared(secret, clock())).toMatchObject({ name: 'gift', version: 39 });
      const { stored } = await other.store.put(owner, 'cutters', 'gone', 2, 'any');
      expect(stored?.version, 'versions of a name never repeat').toBe(2);
      expect(await other.store.remove(owner, 'designs', 'gift', 'any'), 'counts are right').toBe('removed');
    });

    test('say the same after another round', async () => {
      const { owner } = await fill(records);
      const text = await exported(records.archive);
      const other = await newRecords();
      await other.archive.restore(commandLine, sourceOf(text, 7), fresh);
      const withoutActs = (all: string) =>
        linesOf(all).filter(({ line }) => line !== 'act' && line !== 'end');
      expect(withoutActs(await exported(other.archive))).toEqual(withoutActs(text));
      expect(await everything(other, owner)).toEqual(await everything(records, owner));
    });

    test('hold no secret', async () => {
      const { key, share } = await fill(records);
      const session = await records.members.signIn(key);
      const text = await exported(records.archive);
      for (const secret of [key.secret, share.secret, session?.secret ?? 'none'])
        expect(text).not.toContain(secret);
    });

    test('stand in the audit log, which comes along and goes on', async () => {
      await fill(records);
      const text = await exported(records.archive);
      const other = await newRecords();
      await other.archive.restore(commandLine, sourceOf(text), fresh);
      const before = (await records.members.audit({ limit: 100 })).items;
      const [last, ...rest] = (await other.members.audit({ limit: 100 })).items;
      expect(rest).toEqual(before);
      expect(rest[0]).toMatchObject({ act: 'exported', actor: 'command line' });
      expect(last).toMatchObject({
        number: before.length + 1,
        act: 'restored',
        detail: '2 members, 27 things, 65 versions; nothing was there before',
      });
    });

    test('keep any JSON exactly', async () => {
      const other = await newRecords();
      await fc.assert(
        fc.asyncProperty(fc.json({ maxDepth: 4 }), async (json) => {
          const body: unknown = JSON.parse(json);
          fc.pre(!json.includes('__proto__'));
          await records.store.put('her', 'stock', 'paper', body, 'any');
          await other.archive.restore(commandLine, sourceOf(await exported(records.archive)), replacing);
          const read = await other.store.read('her', 'stock', 'paper');
          expect(JSON.stringify(read?.body)).toBe(JSON.stringify(body));
        }),
        { numRuns: 15 },
      );
    });

    test('of nothing are an archive too', async () => {
      const text = await exported(records.archive);
      expect(linesOf(text).map(({ line }) => line)).toEqual(['archive', 'act', 'end']);
      const other = await newRecords();
      expect(await other.archive.restore(commandLine, sourceOf(text), fresh)).toMatchObject({ things: 0 });
    });
  });

  describe('an export', () => {
    test('is one state, whatever is changed while it is written', async () => {
      const { owner } = await fill(records);
      const { out, text } = textSink();
      const done = records.archive.exportTo(commandLine, out);
      for (let n = 0; n < 20; n++) {
        await records.store.put(owner, 'designs', 'gift', { later: n }, 'any');
        await records.store.put(owner, 'stock', `later ${n}`, n, 'any');
      }
      await done;
      const other = await newRecords();
      await other.archive.restore(commandLine, sourceOf(text()), fresh);
      const versions = await other.store.versions(owner, 'gift', { limit: 100 });
      const papers = await other.store.list(owner, 'stock', { limit: 100 });
      const designs = (versions.items[0]?.version ?? 0) - 39;
      const later = papers.items.filter(({ name }) => name.startsWith('later')).length;
      expect(designs - later, 'puts follow one another: at most one was between the two').toBeOneOf([0, 1]);
      expect((await records.store.read(owner, 'designs', 'gift'))?.version).toBe(59);
    });

    test('whose reader leaves says so, and nothing stays locked', async () => {
      const { owner } = await fill(records);
      let lines = 0;
      const out = new Writable({
        write: (_part, _encoding, done) => done(++lines > 30 ? new Error('the reader left') : null),
      });
      await expect(records.archive.exportTo(commandLine, out)).rejects.toThrow('the reader left');
      expect(lines).toBe(31);
      expect((await records.store.put(owner, 'stock', 'red', 1, 'any')).outcome).toBe('created');
    });
  });

  describe('a restore', () => {
    test('leaves alone what is there, unless it may be replaced', async () => {
      const { owner, key } = await fill(records);
      const text = await exported(records.archive);
      const other = await newRecords();
      await other.store.put('home', 'stock', 'red', 1, 'any');
      expect(await other.archive.restore(commandLine, sourceOf(text), fresh)).toBe('not-empty');
      expect(await other.store.read('home', 'stock', 'red')).toBeDefined();
      expect(await other.members.read('Ada')).toBeUndefined();
      await other.members.add(commandLine, 'Cyd', { scopes });
      expect(await other.archive.restore(commandLine, sourceOf(text), replacing)).toMatchObject({
        members: 2,
      });
      expect(await other.store.read('home', 'stock', 'red')).toBeUndefined();
      expect(await other.members.read('Cyd')).toBeUndefined();
      expect(await everything(other, owner)).toEqual(await everything(records, owner));
      expect(await other.members.identify({ by: 'token', key })).toBeDefined();
    });

    test('signs every browser out', async () => {
      const { key } = await fill(records);
      const session = await records.members.signIn(key);
      const text = await exported(records.archive);
      await records.archive.restore(commandLine, sourceOf(text), replacing);
      expect(await records.members.identify({ by: 'cookie', secret: session?.secret ?? '' })).toBeUndefined();
    });

    test('into a group needs somebody who may keep it, or nothing is changed', async () => {
      await records.members.add(commandLine, 'Ada', { scopes: ['read'] });
      const text = await exported(records.archive);
      const other = await newRecords();
      await other.members.add(commandLine, 'Cyd', { scopes });
      const options = { replace: true, needsAdmin: true };
      expect(await other.archive.restore(commandLine, sourceOf(text), options)).toBe('no-admin');
      expect(await other.members.read('Cyd')).toBeDefined();
      expect(await other.members.read('Ada')).toBeUndefined();
    });

    test('of a file that is not sound changes nothing', async () => {
      const { owner } = await fill(records);
      const text = await exported(records.archive);
      const before = await everything(records, owner);
      const log = await records.members.audit({ limit: 100 });
      for (const bad of [
        text.slice(0, -2),
        text.slice(0, text.length / 2),
        text.replace('"paper 7"', '"paper 8"'),
        text.replace('"Ada"', '"Eve"'),
        `${text}\n`,
        '',
      ])
        await expect(records.archive.restore(commandLine, sourceOf(bad), replacing)).rejects.toThrow(
          /^Line \d+/,
        );
      expect(await everything(records, owner)).toEqual(before);
      expect(await records.members.audit({ limit: 100 })).toEqual(log);
    });

    test('that the database refuses in its midst changes nothing', async () => {
      const { owner } = await fill(records);
      const lines = linesOf(await exported(records.archive)).slice(0, -1);
      const before = await everything(records, owner);
      let reading = 0;
      const source = async function* () {
        reading++;
        // the file changes between the two times that it is read
        const now = reading === 1 ? lines : lines.filter(({ line }) => line !== 'version');
        yield* sourceOf(sealed(now))();
      };
      await expect(records.archive.restore(commandLine, source, replacing)).rejects.toThrow(/^Line \d+/);
      expect(reading).toBe(2);
      expect(await everything(records, owner)).toEqual(before);
    });
  });
}
