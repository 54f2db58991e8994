import type { Reply } from '../api/client.ts';
import { type Kept, type Kind, kinds, listKept, putKept, removeKept, whoAmI } from '../api/kept.ts';
import { isObject, type Json } from '../spec/pointer.ts';
import { storeOf } from './store.ts';

/** What the user keeps with the service, as far as it can be reached. */
export interface KeptState {
  readonly reach: 'unknown' | 'ready' | 'signed-out' | 'offline';
  /** Who is signed in; absent at home, where nobody has to. */
  readonly member: string | undefined;
  readonly kept: Readonly<Record<Kind, readonly Kept[]>>;
}

export const keptThings = storeOf<KeptState>({
  reach: 'unknown',
  member: undefined,
  kept: { stock: [], cutters: [], conventions: [], designs: [] },
});

const isList = (answer: readonly Kept[] | Reply): answer is readonly Kept[] => Array.isArray(answer);

const reachOf = (reply: Reply): KeptState['reach'] =>
  reply.kind === 'signed-out' ? 'signed-out' : reply.kind === 'offline' ? 'offline' : 'ready';

async function load(kind: Kind): Promise<void> {
  const answer = await listKept(kind);
  if (isList(answer)) keptThings.set({ reach: 'ready', kept: { ...keptThings.get().kept, [kind]: answer } });
  else keptThings.set({ reach: reachOf(answer) });
}

/** Looks who is there, and fetches everything of theirs. */
export async function loadKept(): Promise<void> {
  const me = await whoAmI();
  if (me.kind === 'signed-out' || me.kind === 'offline') {
    keptThings.set({ reach: reachOf(me) });
    return;
  }
  const about = me.kind === 'done' && isObject(me.body) ? me.body : {};
  keptThings.set({
    member: about.mode === 'group' && typeof about.name === 'string' ? about.name : undefined,
  });
  await Promise.all(kinds.map(load));
}

/** The one of that name, if there is one. */
export const keptAs = (kind: Kind, name: string): Kept | undefined =>
  keptThings.get().kept[kind].find((each) => each.name === name);

/** Keeps something under a name, over what was last seen there, and fetches the list anew. */
export async function keep(kind: Kind, name: string, value: Json): Promise<Reply> {
  const reply = await putKept(kind, name, value, keptAs(kind, name)?.version);
  if (reply.kind === 'done' || (reply.kind === 'refused' && reply.status === 412)) await load(kind);
  else keptThings.set({ reach: reachOf(reply) });
  return reply;
}

export async function removeFrom(kind: Kind, name: string): Promise<Reply> {
  const reply = await removeKept(kind, name);
  if (reply.kind === 'done' || reply.kind === 'refused') await load(kind);
  else keptThings.set({ reach: reachOf(reply) });
  return reply;
}
