import type { z } from 'zod';
import { formatWords } from './format-words.ts';
import { quote } from './name-list.ts';
import { tooBigWords, tooSmallWords } from './size-words.ts';
import { valueAt } from './value-at.ts';
import { joined, kindOf, nameKind, shown } from './value-words.ts';

type Code = z.core.$ZodIssueCode;
type Raw<Of extends Code> = z.core.$ZodRawIssue<Extract<z.core.$ZodIssue, { readonly code: Of }>>;

/** The text of a union that names no member which tells its options apart, and has no text of its own. */
export const unnamedUnion = 'is none of the kinds of value that can stand here';

function typeWords({ expected, input }: Raw<'invalid_type'>): string {
  if (expected === 'never') return 'nothing can stand here';
  const wanted = nameKind(expected);
  if (input !== undefined) return `expected ${wanted}, not ${kindOf(input)}`;
  return expected === 'nonoptional' ? 'is missing' : `is missing: expected ${wanted}`;
}

function unionWords({ discriminator, inclusive, input }: Raw<'invalid_union'>): string {
  if (inclusive === false) return 'fits more than one of the kinds of value that can stand here';
  if (discriminator === undefined) return unnamedUnion;
  const value = valueAt(input, [discriminator]);
  return value === undefined ? 'is missing' : `${shown(value)} is not known here`;
}

/** One entry for each kind of fault that zod knows: a new one would not compile. */
const words: { readonly [Of in Code]: (issue: Raw<Of>) => string } = {
  invalid_type: typeWords,
  too_small: tooSmallWords,
  too_big: tooBigWords,
  invalid_format: formatWords,
  not_multiple_of: ({ divisor, input }) => `${kindOf(input)} is not a whole multiple of ${divisor}`,
  unrecognized_keys: ({ keys }) =>
    `${joined(keys.map(quote))} ${keys.length === 1 ? 'is' : 'are'} not known here`,
  invalid_union: unionWords,
  invalid_key: ({ input }) => `${shown(input)} cannot be a name here`,
  invalid_element: () => 'an entry is not as it must be here',
  invalid_value: ({ input }) => (input === undefined ? 'is missing' : `${shown(input)} is not known here`),
  custom: ({ input }) => (input === undefined ? 'is missing' : `${shown(input)} does not do here`),
};

/** How every fault that zod itself finds is worded, where a schema has no words of its own. */
export const wording: z.core.$ZodErrorMap = (issue) =>
  (words[issue.code] as (issue: z.core.$ZodRawIssue) => string)(issue);
