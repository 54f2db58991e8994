import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';

/** The spec of an envelope. */
export const envelopeSpec = withUnits(
  {
    style: z.literal('envelope').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the closed envelope.'),
            height: dimension('Height of the closed envelope.'),
          })
          .optional()
          .meta({ description: 'The front of the closed envelope.' }),
        side: dimension('Depth of the side flaps.'),
        back: dimension('Height of the flap that folds up from the bottom.'),
        flap: dimension('Depth of the flap that closes it.'),
        gum: dimension('Depth of the gum on the closing flap.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
    flaps: z.enum(['square', 'diagonal']).optional().meta({
      description:
        'Square flaps with seams at the sides (the default), or pointed flaps that meet in diagonal seams.',
    }),
  },
  measureOfSizes,
);

export type EnvelopeSpec = z.output<typeof envelopeSpec>;
