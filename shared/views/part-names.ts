const split = (part: string): readonly [string, string | undefined] => {
  const [first = part, second] = part.split(', ');
  return [first, second];
};

/**
 * A panel's name in a word or two, to be written on it.
 * @param corner a corner of it that was folded over
 */
export function labelOf(part: string, corner = false): string {
  const [row, column] = split(part);
  if (corner) return 'corner';
  if ((column ?? row).endsWith('hem')) return 'hem';
  if (column === undefined && (row === 'front' || row === 'back')) return `${row} cover`;
  return row;
}

/** A panel's name within a sentence: `left hem of the top flap`. */
export function spokenName(part: string): string {
  const [row, column] = split(part);
  if (column === undefined) return row;
  return column.endsWith('hem') ? `${column} of the ${row}` : `${row} at the ${column}`;
}

/** `a`, `a and b`, `a, b and c`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** A sentence's first letter as a capital. */
export const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
