import { isStorable, requireStorable } from '../store/names.ts';
import { requireLimit } from '../store/page-limit.ts';
import type { Runner } from '../store/runner.ts';
import type { Clock } from '../store/store.ts';
import type { Change } from '../store/tables.ts';
import { hasAdmin, NobodyLeft } from './admins.ts';
import { type Doing, listActs, lockActs } from './audit.ts';
import { insertMember, putMember, removeMember } from './change-members.ts';
import { addToken, insertToken, revokeToken } from './change-tokens.ts';
import { giveHomeThings } from './home-things.ts';
import { identify } from './identify.ts';
import { lastUses } from './last-use.ts';
import { listMembers, listTokens } from './list-members.ts';
import { findMember, memberFrom } from './member-rows.ts';
import type { MemberLimits, Members } from './members.ts';
import { newId, newSecret, type Random } from './secrets.ts';
import { addSession, removeSession } from './sessions.ts';

export interface MembersOptions {
  readonly limits: MemberLimits;
  readonly random: Random;
}

/** The members on SQL, the same for every database that the runner may hold. */
export function createMembers(runner: Runner, clock: Clock, { limits, random }: MembersOptions): Members {
  const now = () => clock().toISOString();
  const idAt = (at: string) => newId(random, new Date(at));
  const newKey = (at: string) => ({ id: idAt(at), secret: newSecret(random) });
  const noteUse = lastUses(runner);

  /** A change that is undone if it leaves nobody to keep the group. */
  async function guarded<Result>(work: (change: Change) => Promise<Result>): Promise<Result | 'last-admin'> {
    try {
      return await runner.change(work);
    } catch (error) {
      if (error instanceof NobodyLeft) return 'last-admin';
      throw error;
    }
  }

  return Object.freeze<Members>({
    list: (page) => runner.read((db) => listMembers(db, page)),

    async read(name) {
      if (!isStorable(name)) return undefined;
      const row = await runner.read((db) => findMember(db, name));
      return row && memberFrom(row);
    },

    async put(by, name, { active }) {
      requireStorable(name);
      const doing: Doing = { by, now: now() };
      const wish = { id: idAt(doing.now), name, active, most: limits.members };
      return guarded((change) => putMember(change, doing, wish));
    },

    async add(by, name, wish, { withHomeThings = false } = {}) {
      requireStorable(name);
      const doing: Doing = { by, now: now() };
      const id = idAt(doing.now);
      const key = newKey(doing.now);
      return runner.change(async (change) => {
        await lockActs(change);
        if (await findMember(change, name)) return 'taken';
        const member = await insertMember(change, doing, { id, name, active: true, most: limits.members });
        if (member === 'full') return member;
        if (withHomeThings) await giveHomeThings(change, id);
        return { member, token: await insertToken(change, doing, member, { key, wish }) };
      });
    },

    async remove(by, name) {
      if (!isStorable(name)) return 'absent';
      const doing: Doing = { by, now: now() };
      return guarded((change) => removeMember(change, doing, name));
    },

    async tokens(name, page) {
      return isStorable(name) ? runner.read((db) => listTokens(db, name, page)) : undefined;
    },

    async makeToken(by, name, wish) {
      if (!isStorable(name)) return 'absent';
      const doing: Doing = { by, now: now() };
      const key = newKey(doing.now);
      return runner.change((change) => addToken(change, doing, name, { key, wish, limits }));
    },

    async revoke(by, id, of = {}) {
      if (!isStorable(id)) return 'absent';
      const doing: Doing = { by, now: now() };
      return guarded((change) => revokeToken(change, doing, id, of));
    },

    async identify(credential) {
      const at = clock();
      const found = await runner.read((db) => identify(db, credential, at.toISOString()));
      if (found) noteUse(found.token, found.lastUsed, at);
      return found?.caller;
    },

    async signIn(key) {
      const at = now();
      const secret = newSecret(random);
      return runner.change(async (change) => {
        await lockActs(change);
        const found = await identify(change, { by: 'token', key }, at);
        if (!found) return undefined;
        const expires = await addSession(change, found, { secret, now: at, most: limits.sessions });
        return { secret, expires, caller: found.caller };
      });
    },

    signOut: (secret) => runner.change((change) => removeSession(change, secret)),

    hasAdmin: () => runner.read((db) => hasAdmin(db, now())),

    async audit(page) {
      requireLimit(page.limit);
      return runner.read((db) => listActs(db, page));
    },
  });
}
