import { z } from 'zod';
import { arcPoint } from '../../geometry/arcs.ts';
import { centred } from './centred.ts';
import { DISC, type Disc, SCALLOP, scallop, scalloped } from './scallops.ts';
import { extent, shapeKind } from './shape-kind.ts';

const FEWEST = 6;

/** How many discs go round; the chord between two centres is about a scallop. */
function countFor(diameter: number, width: number): number {
  const toCentres = diameter / 2 - DISC * width;
  if (toCentres <= width) return FEWEST;
  return Math.max(FEWEST, Math.round(Math.PI / Math.asin(width / (2 * toCentres))));
}

/** A circle with a scalloped edge, a scallop at the top. */
export const scallopedCircle = shapeKind({
  name: 'scalloped-circle',
  schema: z.strictObject({
    shape: z.literal('scalloped-circle'),
    diameter: extent('Across, from scallop to scallop'),
    scallop,
  }),
  outline: ({ diameter, scallop: width = SCALLOP }) => {
    const count = countFor(diameter, width);
    // radius = toCentres + DISC · chord, and chord = 2 · toCentres · sin(half a step)
    const half = Math.sin(Math.PI / count);
    const toCentres = diameter / 2 / (1 + 2 * DISC * half);
    const step = 360 / count;
    const discs = Array.from({ length: count }, (_, index): Disc => {
      const outward = -90 + index * step;
      const centre = arcPoint({ centre: { x: 0, y: 0 }, radiusX: toCentres, radiusY: toCentres }, outward);
      return { centre, from: outward - step / 2, to: outward + step / 2 };
    });
    return centred([scalloped(discs, 2 * toCentres * half * DISC)]);
  },
});
