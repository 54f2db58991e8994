import { z } from 'zod';
import { rectangleAt } from '../../geometry/polygons.ts';
import { roundCorners } from '../../geometry/round-corners.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import { shapeKind } from './shape-kind.ts';

/** How much longer a slot is than its ribbon is wide: common practice. */
const PLAY = mm(2);

/** Common practice. */
const WIDTH = mm(1.5);

/** A slot with round ends for a ribbon to go through, lying across. */
export const ribbonSlot = shapeKind({
  name: 'ribbon-slot',
  schema: z.strictObject({
    shape: z.literal('ribbon-slot'),
    ribbon: lengthBetween(mm(2), mm(100)).meta({
      description: 'How wide the ribbon is, 2 mm to 100 mm; the slot is 2 mm longer.',
    }),
    width: lengthBetween(mm(0.5), mm(3))
      .optional()
      .meta({ description: 'How wide the slot is, 0.5 mm to 3 mm; default 1.5 mm.' }),
  }),
  outline: ({ ribbon, width = WIDTH }) => [roundCorners(rectangleAt(ribbon + PLAY, width), width / 2)],
});
