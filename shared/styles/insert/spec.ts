import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { measureOfSizes } from '../../spec/common.ts';
import { cardSize } from '../common/card-size.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { paperShape } from '../common/holds-nothing.ts';

/** The spec of a divider that stands between cards. */
export const insertSpec = withUnits(
  {
    style: z.literal('insert').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...paperShape,
    card: cardSize('The cards that it parts: it is as large as they are.'),
    tab: z
      .strictObject({
        place: z
          .int()
          .min(1)
          .max(12)
          .meta({ description: 'Which place the tab has, counted from the left.' }),
        of: z.int().min(1).max(12).meta({ description: 'How many places there are beside each other.' }),
      })
      .refine(({ place, of }) => place <= of, { error: 'there are not so many places', path: ['place'] })
      .optional()
      .meta({
        description: 'Where the tab stands, so that every divider of a set shows its own; default 1 of 3.',
      }),
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the divider.'),
            height: dimension('Height of the divider without its tab.'),
          })
          .optional()
          .meta({ description: 'The divider without its tab.' }),
        tab: z
          .strictObject({
            width: dimension('Width of the tab where it begins.'),
            height: dimension('How far the tab stands out.'),
          })
          .optional()
          .meta({ description: 'What stands out above the cards.' }),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type InsertSpec = z.output<typeof insertSpec>;
