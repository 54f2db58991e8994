import { isObject, type Json } from '../spec/pointer.ts';
import { type Reply, request } from './client.ts';

/** What a user keeps by name. */
export const kinds = ['stock', 'cutters', 'conventions', 'designs'] as const;
export type Kind = (typeof kinds)[number];

export interface Kept {
  readonly name: string;
  readonly version: number;
  readonly value: Json;
}

/** A page of a list holds at most so many. */
const perPage = 100;
/** More than this nobody picks from a list. */
const mostPages = 20;

const pathOf = (kind: Kind, name: string): string => `v1/${kind}/${encodeURIComponent(name)}`;

const keptIn = (item: Json): Kept[] =>
  isObject(item) &&
  typeof item.name === 'string' &&
  typeof item.version === 'number' &&
  item.value !== undefined
    ? [{ name: item.name, version: item.version, value: item.value }]
    : [];

/** Everything of a kind, page by page; or why there is nothing to show. */
export async function listKept(kind: Kind): Promise<readonly Kept[] | Reply> {
  const all: Kept[] = [];
  let after = '';
  for (let page = 0; page < mostPages; page++) {
    const reply = await request(`v1/${kind}?limit=${perPage}${after}`);
    if (reply.kind !== 'done') return reply;
    const { items, next } = isObject(reply.body) ? reply.body : {};
    if (Array.isArray(items)) all.push(...(items as readonly Json[]).flatMap(keptIn));
    if (typeof next !== 'string') break;
    after = `&after=${encodeURIComponent(next)}`;
  }
  return all;
}

/**
 * Keeps something under a name.
 * @param version the one that was read, if one was: what somebody else kept or changed meanwhile is not lost
 */
export const putKept = (kind: Kind, name: string, value: Json, version?: number): Promise<Reply> =>
  request(pathOf(kind, name), {
    method: 'PUT',
    body: value,
    only: version === undefined ? 'new' : { version },
  });

export const removeKept = (kind: Kind, name: string): Promise<Reply> =>
  request(pathOf(kind, name), { method: 'DELETE' });

export const shareDesign = (name: string): Promise<Reply> =>
  request(`${pathOf('designs', name)}/shares`, { method: 'POST', body: {} });

export const sharesOf = (name: string): Promise<Reply> => request(`${pathOf('designs', name)}/shares`);

export const revokeShare = (name: string, id: string): Promise<Reply> =>
  request(`${pathOf('designs', name)}/shares/${encodeURIComponent(id)}`, { method: 'DELETE' });

export const sharedDesign = (secret: string): Promise<Reply> =>
  request(`v1/shared/${encodeURIComponent(secret)}`);

export const whoAmI = (): Promise<Reply> => request('v1/me');
