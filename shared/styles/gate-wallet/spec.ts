import { z } from 'zod';
import { withUnits } from '../../lengths/length-schema.ts';
import { commonShape, measureOfSizes } from '../../spec/common.ts';
import { dimension, dimensionsText } from '../common/dimension.ts';
import { join } from '../common/lock.ts';

/** The spec of a gate wallet. */
export const gateWalletSpec = withUnits(
  {
    style: z.literal('gate-wallet').meta({ description: 'The way of folding, as GET /v1/styles lists it.' }),
    ...commonShape,
    join,
    dimensions: z
      .strictObject({
        panel: z
          .strictObject({
            width: dimension('Width of the closed wallet.'),
            height: dimension('Height of the closed wallet.'),
          })
          .optional()
          .meta({ description: 'The middle of the wallet.' }),
        hinge: dimension('Distance between the two scores of the left door’s hinge.'),
        outerHinge: dimension('Distance between the two scores of the right door’s hinge.'),
        leftDoor: dimension('Width of the left door.'),
        rightDoor: dimension('Width of the right door.'),
        pocket: dimension('Height of the pocket, from the bottom fold to its mouth.'),
        tab: dimension('Depth of the tabs at the pocket’s ends, with their tongues if they have any.'),
      })
      .optional()
      .meta({ description: dimensionsText }),
    doors: z.enum(['meeting', 'overlapping']).optional().meta({
      description: 'Whether the doors meet in the middle (the default), or the right one lies over the left.',
    }),
  },
  measureOfSizes,
);

export type GateWalletSpec = z.output<typeof gateWalletSpec>;
