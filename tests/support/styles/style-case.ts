import fc from 'fast-check';
import { sizesOfKind } from '../../../shared/sizes/catalogue.ts';
import type { FolderSpec } from '../../../shared/spec/folder-spec.ts';

/** What the contract suite needs to know of a style, written down apart from its code. */
export interface StyleCase {
  readonly style: FolderSpec['style'];
  /** A spec that can be folded, with contents if the style takes any. */
  readonly example: object;
  /** Specs over the style's choices, of which most can be folded. */
  readonly specs: fc.Arbitrary<object>;
  /**
   * Width and height of the blank in millimetres, added up by hand from the style's description.
   * @param mm a dimension by its dotted name, in millimetres
   */
  blankByHand(mm: (dimension: string) => number, spec: FolderSpec): readonly [number, number];
}

const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { nil: undefined });

/** A length as a spec writes it, to a tenth of a millimetre. */
export const lengthOf = (least: number, most: number): fc.Arbitrary<string> =>
  fc.integer({ min: Math.ceil(least * 10), max: Math.floor(most * 10) }).map((tenths) => `${tenths / 10} mm`);

const cards = sizesOfKind('card').filter(({ width, height }) => width >= 60e6 && height <= 180e6);

export const cardSizes = fc.constantFrom(...cards.map(({ id }) => id));

const item = fc.oneof(
  fc.record({ size: cardSizes }),
  fc.record({ width: lengthOf(50, 150), height: lengthOf(50, 150) }),
);

/** What goes in. @param most sets in each pocket */
export const contents = (most: number): fc.Arbitrary<object> =>
  fc.record({
    item: fc
      .record({
        size: item,
        form: maybe(fc.constantFrom('folded', 'flat')),
        caliper: maybe(lengthOf(0.2, 0.5)),
      })
      .map(({ size, ...more }) => ({ ...size, ...more })),
    perPocket: fc.integer({ min: 1, max: most }),
    thickness: maybe(lengthOf(0.3, 3)),
    packing: maybe(fc.constantFrom('pressed', 'loose')),
    turned: maybe(fc.boolean()),
  });

const stock = fc.oneof(
  { weight: 2, arbitrary: fc.constant(undefined) },
  {
    weight: 3,
    arbitrary: fc.record({
      width: lengthOf(250, 700),
      height: lengthOf(250, 700),
      caliper: maybe(lengthOf(0.1, 0.5)),
      oneWay: maybe(fc.boolean()),
      printPair: maybe(fc.constantFrom('same-way', 'head-to-foot')),
      foldFactor: maybe(fc.constantFrom(-0.2, 0, 1)),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      size: fc.constantFrom('iso-a3', 'iso-a2', 'craft-12x12', 'us-ledger'),
      grammage: fc.integer({ min: 120, max: 320 }),
    }),
  },
);

/** The members that every style's spec has, but those of what holds nothing. */
export const around = {
  stock,
  cutter: maybe(
    fc.record({ width: lengthOf(300, 650), height: lengthOf(300, 900), margin: maybe(lengthOf(0, 6)) }),
  ),
  grid: fc.constantFrom(undefined, 'none', '1 mm', '5 mm', '1/16 in', '1/8 in'),
  prefer: fc.constantFrom(undefined, 'whole-sheet', 'least-paper'),
  convention: fc.constantFrom(
    undefined,
    { outline: 'always' },
    { outline: 'never' },
    { sheetLies: 'outside-up' },
  ),
};

/** The members of a style that holds and is glued. @param most sets in each pocket */
export const holding = (most: number) => ({
  ...around,
  contents: contents(most),
  glue: maybe(fc.record({ width: lengthOf(3, 9) })),
  ease: maybe(fc.record({ along: maybe(lengthOf(0.1, 8)), across: maybe(lengthOf(0.1, 8)) })),
});

/** How tabs are held, for a style that leaves the choice. */
export const join = fc.constantFrom(undefined, 'glue', 'slots', 'slots');

/** Specs of a style. */
export const specsOf = (
  style: FolderSpec['style'],
  members: Readonly<Record<string, fc.Arbitrary<unknown>>>,
): fc.Arbitrary<object> =>
  fc.record({ style: fc.constant(style), ...members }).map(
    // as a caller would send it
    (spec): object => JSON.parse(JSON.stringify(spec)),
  );
