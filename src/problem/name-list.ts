import { byNearness, nearestName } from '../../shared/spec/nearest-name.ts';

/** A remedy lists this many names at most. */
const mostNames = 16;
/** A message quotes this many characters of a name at most. */
const longestQuote = 40;

/** A name in quotes, shortened where it is long. */
export const quote = (name: string) =>
  `"${name.length > longestQuote ? `${name.slice(0, longestQuote)}…` : name}"`;

/** Names in one line: all of them, or the nearest to a name that was given. */
export function listNames(name: string, known: readonly string[]): string {
  if (known.length <= mostNames) return known.join(', ');
  const nearest = byNearness(name, known)
    .slice(0, mostNames)
    .map((each) => each.name);
  return `${nearest.join(', ')} and ${known.length - mostNames} more`;
}

/** What to use instead of a name that is not known. */
export function useOneOf(name: string, known: readonly string[]): string {
  const nearest = nearestName(name, known);
  const all = `known here: ${listNames(name, known)}`;
  return nearest === undefined ? all : `did you mean ${quote(nearest)}? ${all}`;
}

/** What to use where no name was given to compare with. */
export const useWords = (words: readonly string[]): string =>
  words.length === 1 ? `use ${quote(words[0] ?? '')}` : `use one of: ${listNames('', words)}`;
