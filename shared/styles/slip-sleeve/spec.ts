import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';

/** The spec of a slip sleeve. */
export const slipSleeveSpec = withUnits(
  {
    style: z.literal('slip-sleeve').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the sleeve.'),
            height: dimension('Height of the sleeve.'),
          })
          .optional()
          .meta({ description: 'The finished sleeve.' }),
        tab: dimension('Depth of the glued tabs at the side and at the bottom.'),
        notch: dimension('Radius of the thumb notch.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
    mouth: z.enum(['notched', 'straight']).optional().meta({
      description: 'Whether the front has a thumb notch at the mouth (the default).',
    }),
  },
  measureOfSizes,
);

export type SlipSleeveSpec = z.output<typeof slipSleeveSpec>;
