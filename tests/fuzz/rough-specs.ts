import fc from 'fast-check';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';

/** Lengths that could be meant, and mostly do not suit the rest. */
const lengths = ['300 mm', '40 mm', '15 mm', '9.35 mm', '3.2 mm', '1 in', '1/2 in', '1/64 in', '9999 mm'];

/** What callers send by mistake, or to see what happens. */
const junk = [
  null,
  true,
  0,
  -1,
  1e300,
  '',
  ' ',
  '0 mm',
  '-3 mm',
  '1/0 in',
  '99999 mm',
  '12',
  '4 feet',
  'x'.repeat(5000),
  'none',
  'constructor',
  [],
  {},
  { size: 'iso-a6' },
  { width: '100 mm', height: '100 mm' },
  [[]],
];

const replacement = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ value: fc.constantFrom<unknown>(...lengths), onlyLengths: fc.constant(true) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ value: fc.constantFrom<unknown>(...junk), onlyLengths: fc.constant(false) }),
  },
);

interface Place {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

const isHolder = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const placesIn = (holder: Record<string, unknown>): readonly Place[] =>
  Object.entries(holder).flatMap(([key, value]) => [
    { holder, key },
    ...(isHolder(value) ? placesIn(value) : []),
  ]);

const isLength = ({ holder, key }: Place): boolean => {
  const value = holder[key];
  return typeof value === 'string' && /\d\s*(?:mm|cm|in|inches|")$/u.test(value);
};

/**
 * Specs with up to two members replaced or added: most are malformed or cannot be folded, some still are
 * right. Lengths stay those that a hand could write.
 */
export const roughSpecs: fc.Arbitrary<unknown> = fc
  .record({
    generated: specs,
    changes: fc.array(fc.record({ place: fc.nat(), wanted: replacement, add: fc.boolean() }), {
      minLength: 1,
      maxLength: 2,
    }),
  })
  .map(({ generated, changes }) => {
    const raw = structuredClone(spell(generated.spec, generated.spelling));
    for (const { place, wanted, add } of changes) {
      const places = placesIn(raw).filter((one) => !wanted.onlyLengths || isLength(one));
      const found = places[place % places.length];
      if (found) found.holder[add && place % 20 === 0 ? 'more' : found.key] = structuredClone(wanted.value);
    }
    return raw;
  });
