import { z } from 'zod';
import { arcPoint } from '../../geometry/arcs.ts';
import type { Point } from '../../geometry/plane.ts';
import { largestCorner, roundCorners } from '../../geometry/round-corners.ts';
import { centred } from './centred.ts';
import { corner, cornerFaults } from './corners.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** Of a pentagram, whose sides lie in line two by two: cos 72° / cos 36°. */
const PENTAGRAM = Math.cos((2 * Math.PI) / 5) / Math.cos(Math.PI / 5);

interface Measures {
  readonly points: number;
  readonly diameter: number;
  readonly inner?: number | undefined;
}

/** Tips and inner corners in turn, clockwise from the tip at the top. */
function cornersOf({ points, diameter, inner = points === 5 ? PENTAGRAM : 0.5 }: Measures): Point[] {
  return Array.from({ length: 2 * points }, (_, index) => {
    const radius = (diameter / 2) * (index % 2 === 0 ? 1 : inner);
    return arcPoint(
      { centre: { x: 0, y: 0 }, radiusX: radius, radiusY: radius },
      -90 + (index * 180) / points,
    );
  });
}

/** A star with straight sides, one tip at the top. */
export const star = shapeKind({
  name: 'star',
  schema: z.strictObject({
    shape: z.literal('star'),
    points: z.int().min(3).max(32).meta({ description: 'How many tips.' }),
    diameter: extent('Of the circle through the tips'),
    inner: z.number().min(0.2).max(0.9).optional().meta({
      description:
        'How far from the middle the inner corners lie, as a share of the tips; default 0.382 for five points, whose sides are then in line, and 0.5 for others.',
    }),
    corner: corner('default 0'),
  }),
  faults: (spec) => cornerFaults(spec.corner ?? 0, largestCorner(cornersOf(spec))),
  outline: (spec) => centred([roundCorners(cornersOf(spec), spec.corner ?? 0)]),
});
