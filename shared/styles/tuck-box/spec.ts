import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { join } from '../common/lock.ts';

/** The spec of a tuck box. */
export const tuckBoxSpec = withUnits(
  {
    style: z.literal('tuck-box').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    join,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the front, from score to score.'),
            height: dimension('Height of the front, from score to score.'),
          })
          .optional()
          .meta({ description: 'The front of the box.' }),
        depth: dimension('Width of the sides, from score to score.'),
        lid: dimension('Depth of the lid and of the bottom, from score to score.'),
        tuck: dimension('How far the lid’s tuck flap reaches into the box.'),
        dustFlap: dimension('Length of the dust flaps at the sides.'),
        tab: dimension('Depth of the tab at the seam, with its tongues if it has any.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type TuckBoxSpec = z.output<typeof tuckBoxSpec>;
