import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { measureOfSizes } from '../../spec/common.ts';
import { cardSize } from '../common/card-size.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { paperShape } from '../common/holds-nothing.ts';

/** The spec of a card base. */
export const cardBaseSpec = withUnits(
  {
    style: z.literal('card-base').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...paperShape,
    card: cardSize('How large the closed card is to be.'),
    fold: z.enum(['single', 'zigzag', 'roll', 'gate']).optional().meta({
      description:
        'One fold (the default), panels folded to and fro, panels rolled into each other, or two half doors over a middle.',
    }),
    panels: z.int().min(2).max(6).optional().meta({
      description: 'How many panels a zigzag or a roll has; default 3. The others have as many as they have.',
    }),
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the closed card.'),
            height: dimension('Height of the closed card.'),
          })
          .optional()
          .meta({ description: 'The front of the closed card.' }),
        step: dimension('How much narrower each panel of a roll is than the one around it.'),
        gap: dimension('Distance between the two doors of a gate.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type CardBaseSpec = z.output<typeof cardBaseSpec>;
