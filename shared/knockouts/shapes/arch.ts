import { z } from 'zod';
import { arcCurves } from '../../geometry/arcs.ts';
import { mm } from '../../lengths/nanometres.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** The straight part of the sides that an arch has at least. */
const LEAST_SIDE = mm(0.1);

/** An arch: flat below, straight sides, a half circle above. */
export const arch = shapeKind({
  name: 'arch',
  schema: z.strictObject({
    shape: z.literal('arch'),
    width: extent('Across'),
    height: extent('From the crown to the bottom; more than half of the width'),
  }),
  faults: ({ width, height }) =>
    height >= width / 2 + LEAST_SIDE
      ? []
      : [
          {
            path: ['height'],
            message: 'an arch that is this low has no sides below its half circle',
            remedy: `give a height of at least ${Math.ceil((width / 2 + LEAST_SIDE) / 10_000) / 100} mm`,
          },
        ],
  outline: ({ width, height }) => {
    const radius = width / 2;
    const bottom = height / 2;
    const centre = { x: 0, y: radius - bottom };
    return [
      {
        start: { x: -radius, y: bottom },
        stretches: [
          { to: { x: -radius, y: centre.y } },
          ...arcCurves({ centre, radiusX: radius, radiusY: radius, from: 180, to: 360 }),
          { to: { x: radius, y: bottom } },
          { to: { x: -radius, y: bottom } },
        ],
      },
    ];
  },
});
