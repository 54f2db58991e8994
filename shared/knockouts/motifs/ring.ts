import { z } from 'zod';
import { arcPoint } from '../../geometry/arcs.ts';
import { shift, turn } from '../../geometry/move-shape.ts';
import { compose } from '../../geometry/plane.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import { repeatKind } from './repeat-kind.ts';

/** Around a circle, clockwise from the top. */
export const ring = repeatKind({
  name: 'ring',
  schema: z.strictObject({
    repeat: z.literal('ring'),
    count: z
      .int()
      .min(1)
      .max(120)
      .meta({ description: 'How many motifs, spread evenly; the first at the top.' }),
    radius: lengthBetween(mm(1), mm(300)).meta({
      description: 'From the middle of the ring to the middle of each motif, 1 mm to 300 mm.',
    }),
    facing: z.enum(['outward', 'upright']).optional().meta({
      description: 'Whether each motif’s top points outward (the default), or all stay upright.',
    }),
  }),
  places: ({ count, radius, facing = 'outward' }) =>
    Array.from({ length: count }, (_, index) => {
      const clockwise = (index * 360) / count;
      const { x, y } = arcPoint({ centre: { x: 0, y: 0 }, radiusX: radius, radiusY: radius }, clockwise - 90);
      return facing === 'upright' ? shift(x, y) : compose(shift(x, y), turn(clockwise));
    }),
});
