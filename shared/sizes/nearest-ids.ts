import { envelopesFor, sizeById, sizes, sizesOfKind } from './catalogue.ts';
import { editDistance } from './edit-distance.ts';
import type { SizeKind } from './size.ts';

const MOST_IDS = 3;

/** Longer than any id; bounds the work for any text. */
const LONGEST_TEXT = 32;

// An id also answers to its name without the namespace, and without the word envelope, at a small cost
// that keeps the full name ahead.
const namesOf = (id: string): readonly (readonly [name: string, cost: number])[] => {
  const bare = id.replace(/^[a-z]+-/u, '');
  return [
    [id, 0],
    [id.replace(/-envelope$/u, ''), 0.5],
    [bare, 0.5],
    [bare.replace(/-envelope$/u, ''), 1],
  ];
};

const plain = (text: string): string =>
  text
    .slice(0, LONGEST_TEXT)
    .toLowerCase()
    .replace(/[^a-z0-9.]+/gu, '-')
    .replace(/^-|-$/gu, '');

const paired = (id: string, kind: SizeKind): readonly string[] => {
  if (kind === 'envelope') return envelopesFor(id).map((size) => size.id);
  return kind === 'card' ? (sizeById(id)?.takes ?? []) : [];
};

/**
 * The ids that somebody may have meant, likeliest first: at most 3, none when nothing comes near.
 * @param text what was written instead of an id
 * @param kind looks only among the sizes of this kind; the id of a card or an envelope gives its other half
 */
export function nearestIds(text: string, kind?: SizeKind): readonly string[] {
  const wanted = plain(text);
  if (wanted === '') return [];
  const pair = kind === undefined ? [] : paired(wanted, kind);
  if (pair.length > 0) return pair.slice(0, MOST_IDS);
  // One slip in three letters still reads as the word that was meant; chosen by trying, not published.
  const furthest = Math.max(1, wanted.length / 3) + 0.5;
  const ranked = (kind === undefined ? sizes : sizesOfKind(kind))
    .map(({ id }) => ({
      id,
      distance: Math.min(...namesOf(id).map(([name, cost]) => editDistance(wanted, name) + cost)),
    }))
    .sort((one, other) => one.distance - other.distance);
  const best = ranked[0]?.distance ?? 0;
  return ranked
    .filter(({ distance }) => distance <= furthest && distance < best + 1)
    .map(({ id }) => id)
    .slice(0, MOST_IDS);
}
