import fc from 'fast-check';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import { randomFrom } from '../../shared/nesting/random.ts';

/** Sheets as shops sell them: 12 × 12 in, A4, A3, 13 × 19 in, 50 × 70 cm, US letter. */
const sheetSizes = [
  [inch(12), inch(12)],
  [mm(210), mm(297)],
  [mm(297), mm(420)],
  [inch(13), inch(19)],
  [mm(500), mm(700)],
  [inch(8.5), inch(11)],
] as const;

/** One of endlessly many kits: 2 to 9 kinds of pieces for 1 to 30 people, in millimetres or sixteenths of an inch. */
export function kitNumber(number: number): NestInput {
  const random = randomFrom(1000 + number);
  const [width, height] = sheetSizes[random.below(sheetSizes.length)] ?? sheetSizes[0];
  const kinds = 2 + random.below(8);
  const people = 1 + random.below(30);
  const metric = random.next() < 0.5;
  const margin = random.next() < 0.5 ? 0 : inch(1 / 4);
  const gap = random.next() < 0.5 ? 0 : mm(2);
  const longest = Math.min(width, height) - 2 * margin;
  const side = () =>
    Math.min(longest, metric ? mm(20 + random.below(180)) : inch((13 + random.below(110)) / 16));
  const pieces = Array.from({ length: kinds }, (_, kind) => ({
    name: `piece ${kind + 1}`,
    width: side(),
    height: side(),
    count: people * (random.next() < 0.2 ? 1 + random.below(4) : 1),
    turns: random.next() < 0.8 ? ('quarter' as const) : ('none' as const),
    paper: 'card',
  }));
  return { pieces, sheets: [{ paper: 'card', width, height, margin }], gap };
}

const small = fc.integer({ min: 1, max: 12 });

/** Small nestings of every kind: several papers and sheets, stock that runs out, faces, gaps, pieces that are too large. */
export const nestInputs: fc.Arbitrary<NestInput> = fc.record({
  pieces: fc.array(
    fc
      .record({
        width: small,
        height: small,
        count: fc.integer({ min: 1, max: 6 }),
        turns: fc.constantFrom('none' as const, 'half' as const, 'quarter' as const),
        paper: fc.constantFrom('card', 'foil'),
        face: fc.option(fc.constantFrom('A' as const, 'B' as const), { nil: undefined, freq: 3 }),
      })
      .map(({ face, ...piece }) => ({ ...piece, name: 'piece', ...(face === undefined ? {} : { face }) })),
    { minLength: 1, maxLength: 5 },
  ),
  sheets: fc.array(
    fc
      .record({
        width: fc.integer({ min: 6, max: 25 }),
        height: fc.integer({ min: 6, max: 25 }),
        paper: fc.constantFrom('card', 'foil'),
        count: fc.option(fc.integer({ min: 0, max: 4 }), { nil: undefined }),
        margin: fc.integer({ min: 0, max: 2 }),
      })
      .map(({ count, ...sheet }) => ({ ...sheet, ...(count === undefined ? {} : { count }) })),
    { minLength: 1, maxLength: 3 },
  ),
  gap: fc.integer({ min: 0, max: 2 }),
  seed: fc.integer({ min: 0, max: 1000 }),
  evaluations: fc.constant(300),
  leastOffcut: fc.constant(2),
});
