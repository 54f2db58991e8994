import { withoutNotes } from '../../../shared/kept/owners-notes.ts';
import { isObject, type Json } from './pointer.ts';

/** A kept paper as a spec may hold it, called by the name under which it is kept. */
export const paperForSpec = (name: string, kept: Json): Json =>
  isObject(kept) ? { name, ...withoutNotes(kept) } : kept;
