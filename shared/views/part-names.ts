import type { Panel } from '../creases/fold-program.ts';
import type { Folded } from '../folding/proof-of.ts';

/** Panels by their names. */
export type PanelNames = ReadonlyMap<string, Panel>;

export const namesIn = ({ program }: Pick<Folded, 'program'>): PanelNames =>
  new Map(program.panels.map((panel) => [panel.name, panel]));

/** A noun that several parts can share. */
export interface Noun {
  readonly one: string;
  /** Absent where what shares the noun is one part in pieces. */
  readonly several?: string;
}

/**
 * A panel's name in a word or two, to be written on it.
 * @param corner a corner of it that was folded over
 */
export function labelOf(names: PanelNames, part: string, corner = false): Noun {
  if (corner) return { one: 'corner', several: 'corners' };
  const { label = part, labels } = names.get(part) ?? {};
  return { one: label, ...(labels === undefined ? {} : { several: labels }) };
}

/** A panel's name within a sentence: `left hem of the top flap`. */
export const titleOf = (names: PanelNames, part: string): string => names.get(part)?.title ?? part;

/** `a`, `a and b`, `a, b and c`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** A sentence's first letter as a capital. */
export const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
