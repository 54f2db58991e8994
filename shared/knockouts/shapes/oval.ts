import { z } from 'zod';
import { ellipse } from '../../geometry/arcs.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** An ellipse whose axes lie across and along. */
export const oval = shapeKind({
  name: 'oval',
  schema: z.strictObject({
    shape: z.literal('oval'),
    width: extent('Across'),
    height: extent('From top to bottom'),
  }),
  outline: ({ width, height }) => [ellipse({ x: 0, y: 0 }, width / 2, height / 2)],
});
