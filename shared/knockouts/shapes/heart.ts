import { z } from 'zod';
import { arcCurves } from '../../geometry/arcs.ts';
import type { Contour, Shape } from '../../geometry/contour.ts';
import { scaleShape } from '../../geometry/move-shape.ts';
import { centred } from './centred.ts';
import { extent, shapeKind } from './shape-kind.ts';

/*
 * A square that stands on a corner, with a half circle on each of its upper sides. For a side of 1 the area is
 * 1 + π/4, the width 1 + 1/√2 and the height 1/2 + 3/(2√2).
 */
const half = Math.SQRT1_2;
const HEIGHT_PER_WIDTH = (1 / 2 + 3 / (2 * Math.SQRT2)) / (1 + half);

/** The heart on a square of side 1 about (0, 0), from the cleft clockwise. */
function onUnitSquare(): Contour {
  const lobe = (x: number, from: number) =>
    arcCurves({ centre: { x, y: -half / 2 }, radiusX: 0.5, radiusY: 0.5, from, to: from + 180 });
  return {
    start: { x: 0, y: -half },
    stretches: [
      ...lobe(half / 2, -135),
      { to: { x: 0, y: half } },
      { to: { x: -half, y: 0 } },
      ...lobe(-half / 2, -225),
    ],
  };
}

/** A heart with two round lobes and a right-angled point. */
export const heart = shapeKind({
  name: 'heart',
  schema: z.strictObject({
    shape: z.literal('heart'),
    width: extent('Across'),
    height: extent('From lobes to point; default: 0.914 of the width').optional(),
  }),
  outline: ({ width, height = width * HEIGHT_PER_WIDTH }): Shape => {
    const side = width / (1 + half);
    return centred(scaleShape([onUnitSquare()], side, (side * height) / (width * HEIGHT_PER_WIDTH)));
  },
});
