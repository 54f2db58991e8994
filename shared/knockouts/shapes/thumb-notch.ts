import { z } from 'zod';
import { arcCurves } from '../../geometry/arcs.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import { shapeKind } from './shape-kind.ts';

/** 10 mm to 13 mm is common practice. */
const RADIUS = mm(12);

/** Half a disc, flat at the top, to lie with its flat side on a pocket's mouth. */
export const thumbNotch = shapeKind({
  name: 'thumb-notch',
  schema: z.strictObject({
    shape: z.literal('thumb-notch'),
    radius: lengthBetween(mm(3), mm(40))
      .optional()
      .meta({ description: 'How deep the notch is, and half of its width, 3 mm to 40 mm; default 12 mm.' }),
  }),
  outline: ({ radius = RADIUS }) => {
    const centre = { x: 0, y: -radius / 2 };
    return [
      {
        start: { x: -radius, y: centre.y },
        stretches: [
          { to: { x: radius, y: centre.y } },
          ...arcCurves({ centre, radiusX: radius, radiusY: radius, from: 0, to: 180 }),
        ],
      },
    ];
  },
});
