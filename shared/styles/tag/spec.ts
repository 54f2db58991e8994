import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { paperShape } from '../common/holds-nothing.ts';

/** The spec of a tag. */
export const tagSpec = withUnits(
  {
    style: z.literal('tag').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...paperShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({ width: dimension('Width of the tag.'), height: dimension('Height of the tag.') })
          .optional()
          .meta({ description: 'The tag itself.' }),
        corner: dimension('How much of each side the two upper corners take, cut off at 45°.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type TagSpec = z.output<typeof tagSpec>;
