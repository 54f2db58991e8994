import { z } from 'zod';
import { arcPoint } from '../../geometry/arcs.ts';
import { scaleShape } from '../../geometry/move-shape.ts';
import { DISC, type Disc, SCALLOP, scallop, scalloped } from './scallops.ts';
import { extent, shapeKind } from './shape-kind.ts';

/** How many steps lie between the corner discs of a side. */
const stepsFor = (side: number, width: number): number => Math.max(1, Math.round(side / width - 2 * DISC));

/** The discs along one side, from a corner's to the one before the next corner's, for steps of 1. */
function discsAlong(corner: Disc['centre'], outward: number, steps: number): Disc[] {
  return Array.from({ length: steps }, (_, index) => ({
    centre: arcPoint({ centre: corner, radiusX: index, radiusY: index }, outward + 90),
    from: index === 0 ? outward - 90 : outward,
    to: outward,
  }));
}

/** A rectangle with a scalloped edge, a scallop at each corner. */
export const scallopedRectangle = shapeKind({
  name: 'scalloped-rectangle',
  schema: z.strictObject({
    shape: z.literal('scalloped-rectangle'),
    width: extent('Across, from scallop to scallop'),
    height: extent('From top to bottom, from scallop to scallop'),
    scallop,
  }),
  outline: ({ width, height, scallop: size = SCALLOP }) => {
    const across = stepsFor(width, size);
    const down = stepsFor(height, size);
    const [x, y] = [across / 2, down / 2];
    const discs = [
      ...discsAlong({ x: -x, y: -y }, -90, across),
      ...discsAlong({ x, y: -y }, 0, down),
      ...discsAlong({ x, y }, 90, across),
      ...discsAlong({ x: -x, y }, 180, down),
    ];
    // steps across and down differ a little, so that both fit
    return scaleShape([scalloped(discs, DISC)], width / (across + 2 * DISC), height / (down + 2 * DISC));
  },
});
