import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { join } from '../common/lock.ts';

/** The spec of a pocket folder. */
export const pocketFolderSpec = withUnits(
  {
    style: z
      .literal('pocket-folder')
      .meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    join,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of a cover, from its outer edge to the spine.'),
            height: dimension('Height of a cover.'),
          })
          .optional()
          .meta({ description: 'One cover of the closed folder.' }),
        spine: dimension('Distance between the two spine scores.'),
        pocket: dimension('Height of the pockets, from the bottom fold to their mouths.'),
        tab: dimension('Depth of the pockets’ tabs, with their tongues if they have any.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
  },
  measureOfSizes,
);

export type PocketFolderSpec = z.output<typeof pocketFolderSpec>;
