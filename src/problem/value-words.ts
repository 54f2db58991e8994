import { quote } from './name-list.ts';

/** What a value is, in words. */
export function kindOf(input: unknown): string {
  if (input === null) return 'null';
  if (input === undefined) return 'nothing';
  if (Array.isArray(input)) return 'a list';
  if (typeof input === 'number') return Number.isFinite(input) ? String(input) : 'a number without end';
  if (typeof input === 'boolean' || typeof input === 'bigint') return String(input);
  return typeof input === 'object' ? 'an object' : `a ${typeof input}`;
}

/** The value itself where it is short enough to be repeated, else what it is. */
export const shown = (input: unknown): string => (typeof input === 'string' ? quote(input) : kindOf(input));

const kindNames: Readonly<Record<string, string>> = {
  array: 'a list',
  bigint: 'a whole number',
  boolean: 'true or false',
  date: 'a date',
  file: 'a file',
  int: 'a whole number',
  map: 'a list of pairs',
  nan: 'no number',
  never: 'nothing',
  nonoptional: 'a value',
  null: 'null',
  number: 'a number',
  object: 'an object',
  record: 'an object',
  set: 'a list',
  string: 'a string',
  tuple: 'a list',
  undefined: 'nothing',
  void: 'nothing',
};

/** A kind of value in words. */
export const nameKind = (expected: string): string => kindNames[expected] ?? expected;

/** Names in one sentence: `a`, `a and b`, `a, b and c`. */
export function joined(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
