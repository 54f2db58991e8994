import { z } from 'zod';
import { ellipse } from '../../geometry/arcs.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** A circle. */
export const circle = shapeKind({
  name: 'circle',
  schema: z.strictObject({ shape: z.literal('circle'), diameter: extent('Across') }),
  outline: ({ diameter }) => [ellipse({ x: 0, y: 0 }, diameter / 2, diameter / 2)],
});
