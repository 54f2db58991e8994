import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';

/** The spec of a four-flap wrap. */
export const fourFlapWrapSpec = withUnits(
  {
    style: z
      .literal('four-flap-wrap')
      .meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the base, between the scores of the side flaps.'),
            height: dimension('Height of the base.'),
          })
          .optional()
          .meta({ description: 'The base that the contents lie on.' }),
        hinge: dimension('Distance between the two scores of each side flap, which close first.'),
        bottomHinge: dimension('The same for the bottom flap, which closes over them.'),
        topHinge: dimension('The same for the top flap, which closes last.'),
        sideFlap: dimension('How far the side flaps reach over the contents.'),
        bottomFlap: dimension('How far the bottom flap reaches over the contents.'),
        topFlap: dimension('How far the top flap reaches over the contents.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type FourFlapWrapSpec = z.output<typeof fourFlapWrapSpec>;
