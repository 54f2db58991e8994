import fc from 'fast-check';
import { beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { commandLine } from '../../../src/members/audit.ts';
import { type Scope, scopes } from '../../../src/members/caller.ts';
import type { Members, NewToken } from '../../../src/members/members.ts';
import { readTokenText } from '../../../src/members/secrets.ts';
import type { Records } from '../../../src/records.ts';
import type { RecordsPlace } from './records-place.ts';
import { setClock } from './set-clock.ts';

const all = { scopes } as const;
const readWrite = { scopes: ['read', 'write'] } as const;

/** The key in a token's text. */
function keyOf({ text }: { readonly text: string }) {
  const key = readTokenText(text);
  if (!key) throw new Error(`${text} is no token`);
  return key;
}

const byToken = (token: { readonly text: string }) => ({ by: 'token', key: keyOf(token) }) as const;

/** Adds a member who must be new. */
async function added(members: Members, name: string, wish: Parameters<Members['add']>[2] = readWrite) {
  const outcome = await members.add(commandLine, name, wish);
  if (typeof outcome === 'string') throw new Error(outcome);
  return outcome;
}

async function made(members: Members, name: string, wish: Parameters<Members['makeToken']>[2] = readWrite) {
  const outcome = await members.makeToken(commandLine, name, wish);
  if (typeof outcome === 'string') throw new Error(outcome);
  return outcome;
}

/** What the audit log says, oldest first, without times. */
async function told(members: Members): Promise<readonly string[]> {
  const { items } = await members.audit({ limit: 100 });
  return items
    .toReversed()
    .map(({ actor, act, target }) => [actor, act, ...(target === undefined ? [] : [target])].join(' '));
}

/** What members on every database must do. @param makePlace gives a new, empty database */
export function membersContract(makePlace: () => Promise<RecordsPlace>): void {
  const clock = setClock();
  let place: RecordsPlace;
  let records: Records;
  let members: Members;

  beforeEach(async () => {
    clock.set('2025-11-03T18:00:00.000Z');
    place = await makePlace();
    onTestFinished(() => place.discard());
    records = place.open({ clock });
    members = records.members;
  });

  describe('a member', () => {
    test('is added with a first token, which shows who it is', async () => {
      const { member, token } = await added(members, 'Ada');
      expect(member).toEqual({
        id: expect.stringMatching(/^[\da-f]{20}$/),
        name: 'Ada',
        active: true,
        created: '2025-11-03T18:00:00.000Z',
      });
      expect(await members.read('Ada')).toEqual(member);
      expect(token.text).toMatch(/^hemfold_[\da-f]{20}_[\w-]{43}$/);
      expect(await members.identify(byToken(token))).toEqual({
        owner: member.id,
        name: 'Ada',
        scopes: new Set(['read', 'write']),
        proof: { by: 'token', token: token.id },
      });
    });

    test('has a name that nobody else has', async () => {
      await added(members, 'Ada');
      expect(await members.add(commandLine, 'Ada', readWrite)).toBe('taken');
      expect((await members.list({ limit: 9 })).items).toHaveLength(1);
    });

    test('is added, suspended and resumed by put, each time with the same effect', async () => {
      const first = await members.put(commandLine, 'Ada', { active: true });
      expect(first).toMatchObject({ outcome: 'added', member: { name: 'Ada', active: true } });
      expect(await members.put(commandLine, 'Ada', { active: true })).toMatchObject({ outcome: 'same' });
      for (const outcome of ['changed', 'same'])
        expect(await members.put(commandLine, 'Ada', { active: false })).toMatchObject({
          outcome,
          member: { active: false },
        });
      expect(await members.put(commandLine, 'Ada', { active: true })).toMatchObject({ outcome: 'changed' });
      expect(await told(members)).toEqual([
        'command line member-added Ada',
        'command line member-suspended Ada',
        'command line member-resumed Ada',
      ]);
    });

    test('who is not there is not read, not removed, and gets no token', async () => {
      for (const name of ['Bo', '', 'x'.repeat(300), '\0']) {
        expect(await members.read(name)).toBeUndefined();
        expect(await members.remove(commandLine, name)).toBe('absent');
        expect(await members.makeToken(commandLine, name, readWrite)).toBe('absent');
        expect(await members.tokens(name, { limit: 9 })).toBeUndefined();
      }
      expect(await told(members)).toEqual([]);
    });

    test('is not taken while suspended, nor are browsers that were signed in, and is again when back', async () => {
      const { token } = await added(members, 'Ada');
      const session = await members.signIn(keyOf(token));
      const cookie = { by: 'cookie', secret: session?.secret ?? '' } as const;
      expect(await members.identify(cookie)).toMatchObject({ name: 'Ada' });
      await members.put(commandLine, 'Ada', { active: false });
      expect(await members.identify(byToken(token))).toBeUndefined();
      expect(await members.identify(cookie)).toBeUndefined();
      expect(await members.signIn(keyOf(token))).toBeUndefined();
      await members.put(commandLine, 'Ada', { active: true });
      expect(await members.identify(byToken(token))).toMatchObject({ name: 'Ada' });
      expect(await members.identify(cookie)).toBeUndefined();
    });

    test('leaves with everything, and one of the same name begins with nothing', async () => {
      const { member, token } = await added(members, 'Ada');
      const { store } = records;
      await store.put(member.id, 'designs', 'gift', 1, 'any');
      await store.put(member.id, 'designs', 'gift', 2, 'any');
      await store.put(member.id, 'stock', 'blue', 1, 'any');
      const share = await store.share(member.id, 'gift');
      const session = await members.signIn(keyOf(token));
      await store.put('somebody', 'stock', 'red', 1, 'any');
      expect(await members.remove(commandLine, 'Ada')).toBe('removed');
      expect(await members.identify(byToken(token))).toBeUndefined();
      expect(await members.identify({ by: 'cookie', secret: session?.secret ?? '' })).toBeUndefined();
      expect(typeof share === 'string' ? share : await store.shared(share.secret, clock())).toBeUndefined();
      for (const kind of ['designs', 'stock'] as const)
        expect((await store.list(member.id, kind, { limit: 9 })).items).toEqual([]);
      expect((await store.list('somebody', 'stock', { limit: 9 })).items).toHaveLength(1);
      const again = await added(members, 'Ada');
      expect(again.member.id).not.toBe(member.id);
      expect((await members.tokens('Ada', { limit: 9 }))?.items).toHaveLength(1);
    });

    test('can be given what was kept at home', async () => {
      const { store } = records;
      await store.put('home', 'designs', 'gift', { n: 1 }, 'any');
      await store.put('home', 'designs', 'gift', { n: 2 }, 'any');
      await store.put('home', 'cutters', 'attic', {}, 'any');
      await store.remove('home', 'cutters', 'attic', 'any');
      const share = await store.share('home', 'gift');
      if (typeof share === 'string') throw new Error(share);
      const outcome = await members.add(commandLine, 'Ada', readWrite, { withHomeThings: true });
      if (typeof outcome === 'string') throw new Error(outcome);
      const owner = outcome.member.id;
      expect((await store.versions(owner, 'gift', { limit: 9 })).items).toHaveLength(2);
      expect((await store.shared(share.secret, clock()))?.owner).toBe(owner);
      expect(await store.read('home', 'designs', 'gift')).toBeUndefined();
      const put = await store.put(owner, 'cutters', 'attic', { width: 1 }, 'any');
      expect(put.stored?.version, 'versions of a name never repeat').toBe(2);
      expect((await store.put('home', 'designs', 'gift', 1, 'absent')).outcome).toBe('created');
    });
  });

  describe('the list of members', () => {
    test('comes in pages, by name', async () => {
      for (const name of ['Cyd', 'Ada', 'Élan', 'Bo', 'ada'])
        await members.put(commandLine, name, { active: true });
      const names: string[] = [];
      for (let after: string | undefined; ; ) {
        const page = await members.list({ limit: 2, ...(after === undefined ? {} : { after }) });
        names.push(...page.items.map(({ name }) => name));
        after = page.next;
        if (after === undefined) break;
      }
      expect(names).toEqual(['Ada', 'Bo', 'Cyd', 'ada', 'Élan']);
    });

    test.each([0, 101, 1.5])('has no pages of %d', async (limit) => {
      await expect(members.list({ limit })).rejects.toThrow(RangeError);
      await expect(members.audit({ limit })).rejects.toThrow(RangeError);
    });

    test('has an end', async () => {
      const few = place.open({ clock, memberLimits: { members: 2 } }).members;
      await few.put(commandLine, 'Ada', { active: true });
      await few.put(commandLine, 'Bo', { active: true });
      expect(await few.put(commandLine, 'Cyd', { active: true })).toBe('full');
      expect(await few.add(commandLine, 'Cyd', readWrite)).toBe('full');
      expect(await few.put(commandLine, 'Ada', { active: false })).toMatchObject({ outcome: 'changed' });
      await few.remove(commandLine, 'Bo');
      expect(await few.put(commandLine, 'Cyd', { active: true })).toMatchObject({ outcome: 'added' });
    });
  });

  describe('a token', () => {
    test('has what was wished, and its text is seen once', async () => {
      await added(members, 'Ada');
      const wish = {
        scopes: ['write', 'read'],
        expires: '2025-12-01T00:00:00.000Z',
        note: 'for the workshop',
      } as const;
      const { text, ...token } = await made(members, 'Ada', wish);
      expect(token).toEqual({
        ...wish,
        scopes: ['read', 'write'],
        id: keyOf({ text }).id,
        created: '2025-11-03T18:00:00.000Z',
      });
      const list = await members.tokens('Ada', { limit: 9 });
      expect(list?.items.find(({ id }) => id === token.id)).toEqual(token);
      expect(JSON.stringify(list)).not.toContain(keyOf({ text }).secret);
    });

    test('with another secret is not taken, nor is one of another id', async () => {
      const { token } = await added(members, 'Ada');
      const { token: other } = await added(members, 'Bo');
      const [key, otherKey] = [keyOf(token), keyOf(other)];
      for (const wrong of [
        { ...key, secret: otherKey.secret },
        { ...key, id: otherKey.id },
        { ...key, secret: `${key.secret.slice(0, -1)}${key.secret.endsWith('A') ? 'B' : 'A'}` },
        { ...key, secret: '' },
        { ...key, id: '' },
      ]) {
        expect(await members.identify({ by: 'token', key: wrong })).toBeUndefined();
        expect(await members.signIn(wrong)).toBeUndefined();
      }
    });

    test('is taken until it expires, and not from then on', async () => {
      await added(members, 'Ada');
      const token = await made(members, 'Ada', { ...readWrite, expires: '2025-11-03T19:00:00.000Z' });
      clock.set('2025-11-03T18:59:59.999Z');
      expect((await members.identify(byToken(token)))?.proof?.expires).toBe('2025-11-03T19:00:00.000Z');
      clock.set('2025-11-03T19:00:00.000Z');
      expect(await members.identify(byToken(token))).toBeUndefined();
      expect(await members.signIn(keyOf(token))).toBeUndefined();
    });

    test('is refused at once when it is revoked, with its browsers; the others of its member are not', async () => {
      const { token: kept } = await added(members, 'Ada');
      const token = await made(members, 'Ada');
      const session = await members.signIn(keyOf(token));
      expect(await members.revoke(commandLine, token.id)).toBe('revoked');
      expect(await members.identify(byToken(token))).toBeUndefined();
      expect(await members.identify({ by: 'cookie', secret: session?.secret ?? '' })).toBeUndefined();
      expect(await members.identify(byToken(kept))).toBeDefined();
      expect(await members.revoke(commandLine, token.id), 'again').toBe('revoked');
      const log = await told(members);
      expect(log.filter((line) => line.includes('token-revoked'))).toEqual([
        'command line token-revoked Ada',
      ]);
      const listed = (await members.tokens('Ada', { limit: 9 }))?.items.find(({ id }) => id === token.id);
      expect(listed?.revoked).toBe('2025-11-03T18:00:00.000Z');
    });

    test('is revoked only as one of the member that was named, and only within the scopes that were named', async () => {
      const { token } = await added(members, 'Ada', all);
      await added(members, 'Bo', all);
      expect(await members.revoke(commandLine, token.id, { member: 'Bo' })).toBe('absent');
      expect(await members.revoke(commandLine, '0'.repeat(20))).toBe('absent');
      expect(await members.revoke(commandLine, '\0')).toBe('absent');
      const within = new Set<Scope>(['read', 'write']);
      expect(await members.revoke(commandLine, token.id, { member: 'Ada', within })).toBe('beyond');
      expect(await members.identify(byToken(token))).toBeDefined();
      expect(await members.revoke(commandLine, token.id, { member: 'Ada' })).toBe('revoked');
    });

    test('says when it was last used, to the minute', async () => {
      const { token } = await added(members, 'Ada');
      const lastUsed = async () => (await members.tokens('Ada', { limit: 9 }))?.items[0]?.lastUsed;
      expect(await lastUsed()).toBeUndefined();
      await members.identify(byToken(token));
      await expect.poll(lastUsed).toBe('2025-11-03T18:00:00.000Z');
      clock.set('2025-11-03T18:00:59.000Z');
      await members.identify(byToken(token));
      await members.identify(byToken(token));
      expect(await lastUsed()).toBe('2025-11-03T18:00:00.000Z');
      clock.set('2025-11-03T18:01:00.000Z');
      await members.identify(byToken(token));
      await expect.poll(lastUsed).toBe('2025-11-03T18:01:00.000Z');
    });

    test('is one of a limited number, and of the dead ones the newest stay listed', async () => {
      const few = place.open({ clock, memberLimits: { tokens: 3, deadTokens: 1 } }).members;
      await added(few, 'Ada');
      const tokens: NewToken[] = [];
      for (const minute of ['01', '02']) {
        clock.set(`2025-11-03T18:${minute}:00.000Z`);
        tokens.push(await made(few, 'Ada'));
      }
      expect(await few.makeToken(commandLine, 'Ada', readWrite)).toBe('full');
      for (const { id } of tokens) await few.revoke(commandLine, id);
      clock.set('2025-11-03T18:03:00.000Z');
      const last = await made(few, 'Ada', { ...readWrite, expires: '2025-11-03T18:04:00.000Z' });
      const listed = (await few.tokens('Ada', { limit: 9 }))?.items.map(({ id }) => id);
      expect(listed).toHaveLength(3);
      expect(listed?.slice(1)).toEqual([tokens[1]?.id, last.id]);
    });

    test('stands in a list that comes in pages, oldest first', async () => {
      await added(members, 'Ada');
      for (let minute = 1; minute < 6; minute++) {
        clock.set(`2025-11-03T18:0${minute}:00.000Z`);
        await made(members, 'Ada');
      }
      const times: string[] = [];
      for (let after: string | undefined; ; ) {
        const page = await members.tokens('Ada', { limit: 4, ...(after === undefined ? {} : { after }) });
        times.push(...(page?.items ?? []).map(({ created }) => created.slice(14, 16)));
        after = page?.next;
        if (after === undefined) break;
      }
      expect(times).toEqual(['00', '01', '02', '03', '04', '05']);
    });
  });

  describe('a signed-in browser', () => {
    test('is known for thirty days, and not longer', async () => {
      const { member, token } = await added(members, 'Ada');
      const session = await members.signIn(keyOf(token));
      expect(session).toMatchObject({
        expires: '2025-12-03T18:00:00.000Z',
        secret: expect.stringMatching(/^[\w-]{43}$/),
        caller: { owner: member.id },
      });
      const cookie = { by: 'cookie', secret: session?.secret ?? '' } as const;
      clock.set('2025-12-03T17:59:59.999Z');
      expect(await members.identify(cookie)).toEqual({
        owner: member.id,
        name: 'Ada',
        scopes: new Set(['read', 'write']),
        proof: { by: 'cookie', token: token.id, expires: '2025-12-03T18:00:00.000Z' },
      });
      clock.set('2025-12-03T18:00:00.000Z');
      expect(await members.identify(cookie)).toBeUndefined();
    });

    test('is told in the log for a year, other acts for good', async () => {
      const { token } = await added(members, 'Ada');
      await members.signIn(keyOf(token));
      const acts = async () =>
        (await members.audit({ limit: 20 })).items.map(({ act, at }) => [act, at.slice(0, 10)]);
      const before = await acts();
      expect(before[0]).toEqual(['signed-in', '2025-11-03']);
      clock.set('2026-11-04T18:00:00.000Z');
      await members.signIn(keyOf(token));
      expect(await acts()).toEqual([['signed-in', '2026-11-04'], ...before.slice(1)]);
    });

    test('is never known for longer than its token', async () => {
      await added(members, 'Ada');
      const token = await made(members, 'Ada', { ...readWrite, expires: '2025-11-04T00:00:00.000Z' });
      expect((await members.signIn(keyOf(token)))?.expires).toBe('2025-11-04T00:00:00.000Z');
    });

    test('can be signed out, alone', async () => {
      const { token } = await added(members, 'Ada');
      const [one, two] = [await members.signIn(keyOf(token)), await members.signIn(keyOf(token))];
      await members.signOut(one?.secret ?? '');
      expect(await members.identify({ by: 'cookie', secret: one?.secret ?? '' })).toBeUndefined();
      expect(await members.identify({ by: 'cookie', secret: two?.secret ?? '' })).toBeDefined();
      expect(await members.identify(byToken(token))).toBeDefined();
    });

    test('gives way to newer ones beyond a limit', async () => {
      const few = place.open({ clock, memberLimits: { sessions: 2 } }).members;
      const { token } = await added(few, 'Ada');
      const secrets: string[] = [];
      for (const minute of ['01', '02', '03']) {
        clock.set(`2025-11-03T18:${minute}:00.000Z`);
        secrets.push((await few.signIn(keyOf(token)))?.secret ?? '');
      }
      const known = await Promise.all(
        secrets.map(async (secret) => (await few.identify({ by: 'cookie', secret })) !== undefined),
      );
      expect(known).toEqual([false, true, true]);
    });
  });

  describe('the last admin', () => {
    test('can be neither suspended nor removed, nor the last admin token revoked', async () => {
      const { token } = await added(members, 'Ada', all);
      await added(members, 'Bo', readWrite);
      expect(await members.hasAdmin()).toBe(true);
      expect(await members.put(commandLine, 'Ada', { active: false })).toBe('last-admin');
      expect(await members.remove(commandLine, 'Ada')).toBe('last-admin');
      expect(await members.revoke(commandLine, token.id)).toBe('last-admin');
      expect(await members.identify(byToken(token))).toBeDefined();
      expect(await told(members)).toEqual([
        'command line member-added Ada',
        'command line token-made Ada',
        'command line member-added Bo',
        'command line token-made Bo',
      ]);
    });

    test('is not the last while another has an admin token that is taken', async () => {
      await added(members, 'Ada', all);
      const { token } = await added(members, 'Bo', all);
      await added(members, 'Cyd', { ...all, expires: '2025-11-03T18:30:00.000Z' });
      await members.revoke(commandLine, token.id);
      clock.set('2025-11-03T18:30:00.000Z');
      expect(await members.remove(commandLine, 'Ada'), 'the others’ are revoked or expired').toBe(
        'last-admin',
      );
      await made(members, 'Cyd', all);
      expect(await members.remove(commandLine, 'Ada')).toBe('removed');
    });

    test('counts only active members', async () => {
      await added(members, 'Ada', all);
      await added(members, 'Bo', all);
      await members.put(commandLine, 'Bo', { active: false });
      expect(await members.remove(commandLine, 'Ada')).toBe('last-admin');
      await members.put(commandLine, 'Bo', { active: true });
      expect(await members.remove(commandLine, 'Ada')).toBe('removed');
      expect(await members.put(commandLine, 'Bo', { active: false })).toBe('last-admin');
    });

    test('stays, also when all are removed at the same time', async () => {
      const others = [records, place.open({ clock }), place.open({ clock })].map((each) => each.members);
      const names = ['Ada', 'Bo', 'Cyd', 'Dee', 'Eve', 'Fay'];
      for (const name of names) await added(members, name, all);
      const outcomes = await Promise.all(
        names.map((name, index) => others[index % others.length]?.remove(commandLine, name)),
      );
      expect(outcomes.filter((outcome) => outcome === 'last-admin')).toHaveLength(1);
      expect(await members.hasAdmin()).toBe(true);
      expect((await members.list({ limit: 9 })).items).toHaveLength(1);
    });

    test('is nobody in an empty group, whose members come and go', async () => {
      expect(await members.hasAdmin()).toBe(false);
      const { token } = await added(members, 'Ada', readWrite);
      expect(await members.hasAdmin()).toBe(false);
      expect(await members.revoke(commandLine, token.id)).toBe('revoked');
      expect(await members.put(commandLine, 'Ada', { active: false })).toMatchObject({ outcome: 'changed' });
      expect(await members.remove(commandLine, 'Ada')).toBe('removed');
    });
  });

  describe('the audit log', () => {
    test('says who did what to whom and when, newest first, in pages', async () => {
      const { member, token } = await added(members, 'Ada', all);
      const actor = { name: 'Ada', id: member.id };
      clock.set('2025-11-03T18:05:00.000Z');
      const session = await members.signIn(keyOf(token));
      await members.put(actor, 'Bo', { active: true });
      const made = await members.makeToken(actor, 'Bo', {
        scopes: ['read'],
        expires: '2026-01-01T00:00:00.000Z',
        note: 'a note that nobody else need know',
      });
      if (typeof made === 'string') throw new Error(made);
      await members.revoke(actor, made.id);
      await members.remove(actor, 'Bo');
      const page = await members.audit({ limit: 4 });
      expect(page.items[1]).toEqual({
        number: 6,
        at: '2025-11-03T18:05:00.000Z',
        actor: 'Ada',
        actorId: member.id,
        act: 'token-revoked',
        target: 'Bo',
        detail: `${made.id}: read, until 2026-01-01T00:00:00.000Z`,
      });
      expect(page.next).toBe(4);
      const rest = await members.audit({ limit: 4, before: page.next ?? 0 });
      expect(rest.next).toBeUndefined();
      expect(
        [...page.items, ...rest.items].map(({ number, act, actorId }) => [number, act, actorId]),
      ).toEqual([
        [7, 'member-removed', member.id],
        [6, 'token-revoked', member.id],
        [5, 'token-made', member.id],
        [4, 'member-added', member.id],
        [3, 'signed-in', member.id],
        [2, 'token-made', undefined],
        [1, 'member-added', undefined],
      ]);
      const text = JSON.stringify([page, rest]);
      for (const secret of [keyOf(token).secret, keyOf(made).secret, session?.secret, 'nobody else'])
        expect(text).not.toContain(secret);
    });

    test('numbers acts without a gap when several services write it', async () => {
      const others = [records, place.open({ clock }), place.open({ clock })];
      await Promise.all(
        Array.from({ length: 12 }, (_, index) =>
          others[index % 3]?.members.put(commandLine, `m${index}`, { active: true }),
        ),
      );
      const { items } = await members.audit({ limit: 100 });
      expect(items.map(({ number }) => number)).toEqual(Array.from({ length: 12 }, (_, index) => 12 - index));
    });
  });

  test('whatever is done in whatever order, who is taken is who should be', async () => {
    type Step = readonly ['add' | 'suspend' | 'resume' | 'remove' | 'make' | 'revoke', number, number];
    const step = fc.tuple(
      fc.constantFrom('add', 'suspend', 'resume', 'remove', 'make', 'revoke'),
      fc.nat(2),
      fc.nat(4),
    ) as fc.Arbitrary<Step>;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 20 }), async (steps) => {
        for (const { name } of (await members.list({ limit: 9 })).items)
          await members.remove(commandLine, name);
        const alive = new Map<string, { name: string; token: NewToken }>();
        const dead: NewToken[] = [];
        const suspended = new Set<string>();
        for (const [act, who, which] of steps) {
          const name = `m${who}`;
          const own = [...alive.values()].filter((each) => each.name === name);
          if (act === 'add') {
            const outcome = await members.add(commandLine, name, readWrite);
            if (typeof outcome !== 'string') alive.set(outcome.token.id, { name, token: outcome.token });
          } else if (act === 'make') {
            const outcome = await members.makeToken(commandLine, name, readWrite);
            if (typeof outcome !== 'string') alive.set(outcome.id, { name, token: outcome });
          } else if (act === 'revoke') {
            const token = own[which]?.token;
            if (token) {
              await members.revoke(commandLine, token.id);
              alive.delete(token.id);
              dead.push(token);
            }
          } else if (act === 'remove') {
            await members.remove(commandLine, name);
            suspended.delete(name);
            for (const { token } of own) {
              alive.delete(token.id);
              dead.push(token);
            }
          } else if (await members.read(name)) {
            await members.put(commandLine, name, { active: act === 'resume' });
            if (act === 'resume') suspended.delete(name);
            else suspended.add(name);
          }
        }
        for (const { name, token } of alive.values())
          expect((await members.identify(byToken(token)))?.name).toBe(suspended.has(name) ? undefined : name);
        for (const token of dead) expect(await members.identify(byToken(token))).toBeUndefined();
      }),
      { numRuns: 12 },
    );
  });
}
