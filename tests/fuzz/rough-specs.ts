import fc from 'fast-check';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';

/** What callers send by mistake, or to see what happens. */
const junk = fc.constantFrom<unknown>(
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
  '9999 mm',
  '99999 mm',
  '300 mm',
  '40 mm',
  '1 in',
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

/**
 * Specs with up to two members replaced or added: most are malformed or cannot be folded, some still are
 * right. Lengths stay those that a hand could write.
 */
export const roughSpecs: fc.Arbitrary<unknown> = fc
  .record({
    generated: specs,
    changes: fc.array(fc.record({ place: fc.nat(), value: junk, add: fc.boolean() }), {
      minLength: 1,
      maxLength: 2,
    }),
  })
  .map(({ generated, changes }) => {
    const raw = structuredClone(spell(generated.spec, generated.spelling));
    for (const { place, value, add } of changes) {
      const places = placesIn(raw);
      const found = places[place % places.length];
      if (found) found.holder[add && place % 10 === 0 ? 'more' : found.key] = structuredClone(value);
    }
    return raw;
  });
