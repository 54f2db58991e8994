import { z } from 'zod';
import { lengthBetween, lengthOrZero, type Settled } from '../lengths/length-schema.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';

const limit = lengthBetween(mm(0.2), mm(50));

/** What a maker may set instead of the usual limits. */
export const knockoutLimits = z
  .strictObject({
    leastWeb: limit
      .optional()
      .meta({ description: 'Paper between two cuts: less is refused; default 1.5 mm.' }),
    goodWeb: limit.optional().meta({ description: 'Paper between two cuts: less is told; default 2 mm.' }),
    leastOpening: limit.optional().meta({ description: 'Width of an opening: less is told; default 2 mm.' }),
    slenderest: z.number().min(1).max(200).optional().meta({
      description: 'How many times as long as wide a web may be before it is told; default 12.',
    }),
    toScore: lengthOrZero.optional().meta({ description: 'From an opening to a score; default 6 mm.' }),
    toEdge: lengthOrZero
      .optional()
      .meta({ description: 'From an opening to the paper’s edge; default 6 mm.' }),
    toGlue: lengthOrZero.optional().meta({ description: 'From an opening to glue; default 6 mm.' }),
    toMouth: lengthOrZero
      .optional()
      .meta({ description: 'From an opening to a pocket’s mouth; default 6 mm.' }),
  })
  .meta({
    id: 'KnockoutLimits',
    description: 'How small and how near things may be, where the usual does not suit.',
  });

export type KnockoutLimits = { readonly [Name in keyof Settled<z.output<typeof knockoutLimits>>]-?: number };

/** For card of 200 to 300 g/m²; common practice, no published source. Lengths in nanometres. */
const usual: KnockoutLimits & Readonly<Record<Exclude<keyof KnockoutLimits, 'slenderest'>, Nm>> =
  Object.freeze({
    leastWeb: mm(1.5),
    goodWeb: mm(2),
    leastOpening: mm(2),
    slenderest: 12,
    toScore: mm(6),
    toEdge: mm(6),
    toGlue: mm(6),
    toMouth: mm(6),
  });

/** The limits that hold for a spec; a web that must be refused is never a good one. */
export function limitsOf(own: Settled<z.output<typeof knockoutLimits>> | undefined): KnockoutLimits {
  const said = Object.entries(own ?? {}).filter(([, value]) => value !== undefined);
  const limits: KnockoutLimits = { ...usual, ...Object.fromEntries(said) };
  if (limits.goodWeb >= limits.leastWeb) return limits;
  return own?.goodWeb === undefined
    ? { ...limits, goodWeb: limits.leastWeb }
    : { ...limits, leastWeb: limits.goodWeb };
}
