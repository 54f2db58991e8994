import { z } from 'zod';
import { rectangleAt } from '../../geometry/polygons.ts';
import { roundCorners } from '../../geometry/round-corners.ts';
import { mm } from '../../lengths/nanometres.ts';
import { corner, cornerFaults } from './corners.ts';
import { extent, shapeKind } from './shape-kind.ts';

const CORNER = mm(3);

const radiusOf = (spec: { corner?: number | undefined; width: number; height: number }): number =>
  spec.corner ?? Math.min(CORNER, spec.width / 2, spec.height / 2);

/** A rectangle with round corners, or sharp ones where the radius is 0. */
export const roundedRectangle = shapeKind({
  name: 'rounded-rectangle',
  schema: z.strictObject({
    shape: z.literal('rounded-rectangle'),
    width: extent('Across'),
    height: extent('From top to bottom'),
    corner: corner('default 3 mm, or half of the shorter side where that is less'),
  }),
  faults: (spec) => cornerFaults(radiusOf(spec), Math.min(spec.width, spec.height) / 2),
  outline: (spec) => [roundCorners(rectangleAt(spec.width, spec.height), radiusOf(spec))],
});
