import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { problemFromInput } from '../../../src/problem/problem-from.ts';
import { readWith } from '../../../src/problem/read-with.ts';
import { wording } from '../../../src/problem/wording.ts';

type Case = readonly [asked: string, schema: z.ZodType, input: unknown, message: string];

/** What a reader is told of the first fault. */
function messageOf(schema: z.ZodType, input: unknown): string | undefined {
  try {
    readWith(schema, input);
    return undefined;
  } catch (error) {
    return problemFromInput(error)?.errors[0]?.message;
  }
}

/** Every kind of fault that zod knows, since each code is a key; a reader sees these words. */
const cases: Readonly<Record<z.core.$ZodIssueCode, readonly Case[]>> = {
  invalid_type: [
    ['a missing text', z.string(), undefined, 'is missing: expected a string'],
    ['a text', z.string(), 5, 'expected a string, not 5'],
    ['a number', z.number(), 'five', 'expected a number, not a string'],
    [
      'a number with an end',
      z.number(),
      Number.POSITIVE_INFINITY,
      'expected a number, not a number without end',
    ],
    ['a whole number', z.int(), 1.5, 'expected a whole number, not 1.5'],
    ['a choice of two', z.boolean(), 'yes', 'expected true or false, not a string'],
    ['another kind than true', z.string(), true, 'expected a string, not true'],
    ['an object', z.strictObject({}), null, 'expected an object, not null'],
    ['an object with any names', z.record(z.string(), z.number()), [], 'expected an object, not a list'],
    ['a list', z.array(z.number()), {}, 'expected a list, not an object'],
    ['a list of a known length', z.tuple([z.number()]), 'x', 'expected a list, not a string'],
    ['null', z.null(), 1, 'expected null, not 1'],
    ['nothing at all', z.never(), 1, 'nothing can stand here'],
    ['nothing', z.undefined(), 1, 'expected nothing, not 1'],
    ['anything but nothing', z.string().optional().nonoptional(), undefined, 'is missing'],
    ['no number', z.nan(), 1, 'expected no number, not 1'],
    ['a date', z.date(), 1, 'expected a date, not 1'],
    ['a big whole number', z.bigint(), 1, 'expected a whole number, not 1'],
    ['a set', z.set(z.number()), 1, 'expected a list, not 1'],
    ['pairs', z.map(z.string(), z.number()), 1, 'expected a list of pairs, not 1'],
    ['one of two kinds', z.union([z.number(), z.strictObject({})]), 'x', 'expected a number or an object'],
  ],
  too_small: [
    ['a least number', z.number().min(2), 1, '1 is too small: it must be 2 or more'],
    ['more than a number', z.number().positive(), 0, '0 is too small: it must be more than 0'],
    ['a least big number', z.bigint().min(2n), 1n, '1 is too small: it must be 2 or more'],
    ['some text', z.string().min(1), '', 'the text is empty; at least 1 character is needed'],
    ['longer text', z.string().min(3), 'a', 'the text has 1 character; at least 3 characters are needed'],
    [
      'text of one length',
      z.string().length(3),
      'ab',
      'the text has 2 characters; exactly 3 characters are needed',
    ],
    [
      'a list with something in it',
      z.array(z.number()).min(1),
      [],
      'the list is empty; at least 1 entry is needed',
    ],
    ['a longer list', z.array(z.number()).min(3), [1], 'the list has 1 entry; at least 3 entries are needed'],
    [
      'a whole tuple',
      z.tuple([z.null(), z.null()]),
      [null],
      'the list has 1 entry; at least 2 entries are needed',
    ],
    [
      'a set with something in it',
      z.set(z.number()).min(1),
      new Set(),
      'the list is empty; at least 1 entry is needed',
    ],
    [
      'a date from a day on',
      z.date().min(new Date('2026-05-31')),
      new Date(0),
      'the date is too early: it must not be before 2026-05-31',
    ],
    [
      'a file with something in it',
      z.file().min(1),
      new File([], 'x'),
      'the file is empty; at least 1 byte is needed',
    ],
  ],
  too_big: [
    ['a largest number', z.number().max(200), 300, '300 is too large: it must be 200 or less'],
    ['less than a number', z.number().lt(5), 5, '5 is too large: it must be less than 5'],
    [
      'a number that is held exactly',
      z.int(),
      1e300,
      '1e+300 is too large: it must be 9007199254740991 or less',
    ],
    ['short text', z.string().max(2), 'abc', 'the text has 3 characters; at most 2 characters are allowed'],
    [
      'text of one length',
      z.string().length(1),
      'ab',
      'the text has 2 characters; exactly 1 character is needed',
    ],
    [
      'a short list',
      z.array(z.number()).max(1),
      [1, 2],
      'the list has 2 entries; at most 1 entry is allowed',
    ],
    ['an empty list', z.array(z.number()).max(0), [1], 'the list must be empty'],
    [
      'a date until a day',
      z.date().max(new Date(0)),
      new Date('2026-05-31'),
      'the date is too late: it must not be after 1970-01-01',
    ],
    [
      'a small file',
      z.file().max(1),
      new File(['xyz'], 'x'),
      'the file has 3 bytes; at most 1 byte is allowed',
    ],
  ],
  invalid_format: [
    ['a pattern', z.string().regex(/^[a-z]+$/u), 'A6', '"A6" is not written as it must be here'],
    ['a beginning', z.string().startsWith('step-'), 'x', '"x" must begin with "step-"'],
    ['an end', z.string().endsWith('.svg'), 'x', '"x" must end with ".svg"'],
    ['a part', z.string().includes('mm'), 'x', '"x" must have "mm" in it'],
    ['small letters', z.string().lowercase(), 'X', '"X" must be in small letters'],
    ['capital letters', z.string().uppercase(), 'x', '"x" must be in capital letters'],
    ['a fixed form', z.templateLiteral(['step-', z.number()]), 'x', '"x" is not written as it must be here'],
    ['an address', z.url(), 'x', '"x" is not a web address'],
    ['a day', z.iso.date(), 'x', '"x" is not a date such as 2026-05-31'],
    ['an id', z.uuid(), 'x', '"x" is not an id in 32 hexadecimal digits'],
    ['another named form', z.nanoid(), 'x', '"x" is not written as it must be here'],
  ],
  not_multiple_of: [['whole steps', z.number().multipleOf(5), 7, '7 is not a whole multiple of 5']],
  unrecognized_keys: [['known names only', z.strictObject({}), { hme: 1 }, '"hme" is not known here']],
  invalid_union: [
    [
      'a named option',
      z.discriminatedUnion('style', [z.strictObject({ style: z.literal('flat') })]),
      { style: 'tall' },
      '"tall" is not known here',
    ],
    [
      'the name of an option',
      z.discriminatedUnion('style', [z.strictObject({ style: z.literal('flat') })]),
      {},
      'is missing',
    ],
    [
      'exactly one option',
      z.xor([z.number(), z.number()]),
      1,
      'fits more than one of the kinds of value that can stand here',
    ],
  ],
  invalid_key: [
    [
      'a name of some form',
      z.record(z.string().max(1), z.number()),
      { ab: 1 },
      'the text has 2 characters; at most 1 character is allowed',
    ],
  ],
  invalid_element: [
    [
      'pairs of one kind',
      z.map(z.null(), z.number()),
      new Map([[null, 'x']]),
      'expected a number, not a string',
    ],
  ],
  invalid_value: [
    ['one of some words', z.enum(['flat', 'tall']), 'low', '"low" is not known here'],
    ['a fixed word', z.literal('flat'), undefined, 'is missing'],
    ['a fixed number', z.literal(1), 2, '2 is not known here'],
  ],
  custom: [
    ['what a check without words asks', z.string().refine(() => false), 'x', '"x" does not do here'],
    ['what a check with words asks', z.string().refine(() => false, 'too blue'), 'x', 'too blue'],
  ],
};

describe.each(Object.entries(cases))('%s', (code, ofCode) => {
  test.each(ofCode)('where %s is asked for', (_asked, schema, input, message) => {
    expect(messageOf(schema, input)).toBe(message);
  });

  test('is the kind of fault that these cases have', () => {
    for (const [asked, schema, input] of ofCode) {
      const codes = z.safeParse(schema, input).error?.issues.map((issue) => issue.code);
      // a union of other kinds than the input is told as a wrong type
      const expected = asked === 'one of two kinds' ? 'invalid_union' : code;
      expect(codes, asked).toEqual([expected]);
    }
  });
});

/** Words and signs of zod's own texts. */
const zodLike =
  /invalid|received|[<>]=?|too (?:big|small): expected|unrecognized|discriminator|to have|pattern/iu;

test('no text of zod itself is left, for any kind of fault', () => {
  for (const [, schema, input] of Object.values(cases).flat()) {
    const own = z.safeParse(schema, input).error?.issues[0]?.message ?? '';
    const reworded = z.safeParse(schema, input, { error: wording }).error?.issues ?? [];
    for (const { message } of reworded) expect(message).not.toMatch(zodLike);
    // and the check knows zod's texts when it sees them
    if (own !== 'too blue') expect(own).toMatch(zodLike);
  }
});

test.each(['en', 'de'] as const)('the words do not depend on the language that zod is set to: %s', (name) => {
  const before = z.config().localeError;
  try {
    z.config(z.locales[name]());
    expect(messageOf(z.number().min(2), 1)).toBe('1 is too small: it must be 2 or more');
  } finally {
    z.config({ localeError: before });
  }
});
