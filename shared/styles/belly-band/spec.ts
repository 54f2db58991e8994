import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { join } from '../common/lock.ts';

/** The spec of a belly band. */
export const bellyBandSpec = withUnits(
  {
    style: z.literal('belly-band').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    join,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the front, from side to side.'),
            height: dimension('Height of the band.'),
          })
          .optional()
          .meta({ description: 'The front of the band.' }),
        side: dimension('Distance between the two scores at each side.'),
        overlap: dimension(
          'How far the two ends lie over each other at the back, with the tongue if there is one.',
        ),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type BellyBandSpec = z.output<typeof bellyBandSpec>;
