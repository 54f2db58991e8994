import { isObject, type Json } from './pointer.ts';

/** What an owner notes of a paper beside what a spec says of it; `shared/kept/kept-stock.ts` leaves out the same. */
const ownersNotes = new Set(['faces', 'count', 'price', 'notes']);

/** A kept paper as a spec may hold it, called by the name under which it is kept. */
export function paperForSpec(name: string, kept: Json): Json {
  if (!isObject(kept)) return kept;
  const paper = Object.entries(kept).filter(([member]) => !ownersNotes.has(member));
  return { name, ...Object.fromEntries(paper) };
}
