import type { z } from 'zod';
import { quote } from './name-list.ts';
import { valueAt } from './value-at.ts';

function kindOf(input: unknown): string {
  if (input === null) return 'null';
  if (Array.isArray(input)) return 'a list';
  if (typeof input === 'number') return Number.isFinite(input) ? String(input) : 'a number without end';
  return typeof input === 'object' ? 'an object' : `a ${typeof input}`;
}

const shown = (input: unknown) => (typeof input === 'string' ? quote(input) : kindOf(input));

const kindNames: Readonly<Record<string, string>> = {
  array: 'a list',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number',
  object: 'an object',
  record: 'an object',
  string: 'a string',
  tuple: 'a list',
};

/** A kind of value in words. */
export const nameKind = (expected: string) => kindNames[expected] ?? expected;

/** How zod's own faults are worded where a schema has no words of its own. */
export const wording: z.core.$ZodErrorMap = (issue) => {
  if (issue.code === 'invalid_value')
    return issue.input === undefined ? 'is missing' : `${shown(issue.input)} is not known here`;
  if (issue.code === 'invalid_union' && issue.discriminator !== undefined) {
    const value = valueAt(issue.input, [issue.discriminator]);
    return value === undefined ? 'is missing' : `${shown(value)} is not known here`;
  }
  if (issue.code !== 'invalid_type') return undefined;
  const expected = nameKind(issue.expected);
  return issue.input === undefined
    ? `is missing: expected ${expected}`
    : `expected ${expected}, not ${kindOf(issue.input)}`;
};
