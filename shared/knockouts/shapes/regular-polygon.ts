import { z } from 'zod';
import { arcPoint } from '../../geometry/arcs.ts';
import type { Point } from '../../geometry/plane.ts';
import { largestCorner, roundCorners } from '../../geometry/round-corners.ts';
import { centred } from './centred.ts';
import { corner, cornerFaults } from './corners.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** Corners on a circle, clockwise; a side lies at the bottom. */
function cornersOf({ sides, diameter }: { sides: number; diameter: number }): Point[] {
  const circle = { centre: { x: 0, y: 0 }, radiusX: diameter / 2, radiusY: diameter / 2 };
  const bottomRight = 90 - 180 / sides;
  return Array.from({ length: sides }, (_, index) => arcPoint(circle, bottomRight + (index * 360) / sides));
}

/** A polygon with equal sides and angles. */
export const regularPolygon = shapeKind({
  name: 'regular-polygon',
  schema: z.strictObject({
    shape: z.literal('regular-polygon'),
    sides: z.int().min(3).max(24).meta({ description: 'How many; one of them lies at the bottom.' }),
    diameter: extent('Of the circle through the corners'),
    corner: corner('default 0'),
  }),
  faults: (spec) => cornerFaults(spec.corner ?? 0, largestCorner(cornersOf(spec))),
  outline: (spec) => centred([roundCorners(cornersOf(spec), spec.corner ?? 0)]),
});
