import { z } from 'zod';
import { length, withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';

const dimension = (description: string) => length.optional().meta({ description });

/** The spec of a twin sleeve. */
export const twinSleeveSpec = withUnits(
  {
    style: z.literal('twin-sleeve').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of a cover, from hem to spine.'),
            height: dimension('Height of a cover.'),
          })
          .optional()
          .meta({ description: 'One cover of the closed folder.' }),
        spine: dimension('Distance between the two spine scores.'),
        hem: dimension('Depth of the hems at the two pocket mouths.'),
        topFlap: dimension('Height of the flap that folds down.'),
        bottomFlap: dimension('Height of the flap that folds up.'),
        overlap: dimension('How far the two flaps lie over each other at the seam.'),
      })
      .optional()
      .meta({ description: 'Dimensions to keep exactly; the solver finds the others.' }),
    hem: z
      .strictObject({
        turn: z.enum(['out', 'in']).meta({
          description: 'Hems fold to the outside face, a band in the inside print, or in and out of sight.',
        }),
      })
      .optional()
      .meta({ description: 'The hems at the two pocket mouths.' }),
    seam: z.enum(['tucked', 'flat']).optional().meta({
      description:
        'Whether the hems of the two flaps are slipped into each other at the ends (the default), or the bottom flap just lies over the top flap.',
    }),
    corners: z
      .enum(['folded', 'mitred'])
      .optional()
      .meta({ description: 'Corners are folded in before the hems (the default), or cut away.' }),
  },
  measureOfSizes,
);

export type TwinSleeveSpec = z.output<typeof twinSleeveSpec>;
