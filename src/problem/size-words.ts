import type { z } from 'zod';
import { kindOf } from './value-words.ts';

type TooSmall = z.core.$ZodRawIssue<z.core.$ZodIssueTooSmall>;
type TooBig = z.core.$ZodRawIssue<z.core.$ZodIssueTooBig>;

/** A thing that is counted: what it is called, and one and several of its parts. */
interface Counted {
  readonly name: string;
  readonly one: string;
  readonly several: string;
}

const list: Counted = { name: 'list', one: 'entry', several: 'entries' };

/** By zod's name for where a size comes from; every other one is a number. */
const counted: Readonly<Record<string, Counted>> = {
  array: list,
  tuple: list,
  set: list,
  map: list,
  string: { name: 'text', one: 'character', several: 'characters' },
  record: { name: 'object', one: 'member', several: 'members' },
  object: { name: 'object', one: 'member', several: 'members' },
  file: { name: 'file', one: 'byte', several: 'bytes' },
};

/** How many parts a value has; undefined where that cannot be counted. */
function countOf(input: unknown): number | undefined {
  if (typeof input === 'string' || Array.isArray(input)) return input.length;
  if (input instanceof Map || input instanceof Set || input instanceof Blob) return input.size;
  return typeof input === 'object' && input !== null ? Object.keys(input).length : undefined;
}

/** `the list has 30 entries; at most 24 are allowed`. */
function countWords({ name, one, several }: Counted, input: unknown, rule: string): string {
  const count = countOf(input);
  if (count === undefined) return `the ${name} has another size; ${rule}`;
  const has =
    count === 0 ? `the ${name} is empty` : `the ${name} has ${count} ${count === 1 ? one : several}`;
  return `${has}; ${rule}`;
}

const are = (count: number | bigint, { one, several }: Counted): string =>
  Number(count) === 1 ? `1 ${one} is` : `${count} ${several} are`;

const day = (time: number | bigint): string => new Date(Number(time)).toISOString().slice(0, 10);

/** Something with too few parts, or a number that is too low. */
export function tooSmallWords({ origin, minimum, inclusive, exact, input }: TooSmall): string {
  const things = counted[origin];
  if (things)
    return countWords(things, input, `${exact ? 'exactly' : 'at least'} ${are(minimum, things)} needed`);
  if (origin === 'date') return `the date is too early: it must not be before ${day(minimum)}`;
  const bound = inclusive === false ? `it must be more than ${minimum}` : `it must be ${minimum} or more`;
  return `${kindOf(input)} is too small: ${bound}`;
}

/** Something with too many parts, or a number that is too high. */
export function tooBigWords({ origin, maximum, inclusive, exact, input }: TooBig): string {
  const things = counted[origin];
  if (things) {
    if (Number(maximum) === 0) return `the ${things.name} must be empty`;
    return countWords(
      things,
      input,
      exact ? `exactly ${are(maximum, things)} needed` : `at most ${are(maximum, things)} allowed`,
    );
  }
  if (origin === 'date') return `the date is too late: it must not be after ${day(maximum)}`;
  const bound = inclusive === false ? `it must be less than ${maximum}` : `it must be ${maximum} or less`;
  return `${kindOf(input)} is too large: ${bound}`;
}
