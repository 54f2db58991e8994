import { z } from 'zod';
import { ellipse } from '../../geometry/arcs.ts';
import type { Shape } from '../../geometry/contour.ts';
import { polygon, reverse } from '../../geometry/walk.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';
import { extent, type ShapeFault, shapeKind } from './shape-kind.ts';

/** What is left at least of the top edge, of each side and around the eyelet. */
const LEAST = mm(0.5);

interface Measures {
  readonly width: number;
  readonly height: number;
  readonly shoulder?: number | undefined;
  readonly eyelet?: { readonly diameter: number; readonly below?: number | undefined } | undefined;
}

const shoulderOf = ({ width, height, shoulder }: Measures): number =>
  shoulder ?? Math.min(width / 4, height / 2);

/** How far the eyelet's middle lies below the top edge. */
const depthOf = (spec: Measures): number =>
  spec.eyelet?.below ?? Math.max(shoulderOf(spec), spec.eyelet?.diameter ?? 0);

function faults(spec: Measures): ShapeFault[] {
  const { width, height, eyelet } = spec;
  const shoulder = shoulderOf(spec);
  const most = Math.min((width - LEAST) / 2, height - LEAST);
  if (shoulder > most)
    return [
      {
        path: ['shoulder'],
        message: 'the cut corners leave nothing of the top or of the sides',
        remedy: `give a shoulder of at most ${Math.floor(most / 10_000) / 100} mm`,
      },
    ];
  if (!eyelet) return [];
  const depth = depthOf(spec);
  const toSlope = (width / 2 - shoulder + depth) * Math.SQRT1_2;
  const rim = Math.min(depth, height - depth, width / 2, toSlope) - eyelet.diameter / 2;
  if (rim >= LEAST) return [];
  return [
    {
      path: ['eyelet'],
      message: 'the eyelet does not lie within the tag',
      remedy: 'give a smaller eyelet, or one whose middle lies further from the edges',
    },
  ];
}

/** A tag: a rectangle with the two upper corners cut off at 45°, with or without an eyelet, which is a counter. */
export const tag = shapeKind({
  name: 'tag',
  schema: z.strictObject({
    shape: z.literal('tag'),
    width: extent('Across'),
    height: extent('From top to bottom'),
    shoulder: lengthBetween(mm(0.5), mm(300)).optional().meta({
      description:
        'How much of the top and of each side the cut corners take; default a quarter of the width, at most half of the height.',
    }),
    eyelet: z
      .strictObject({
        diameter: lengthBetween(mm(1), mm(50)).meta({ description: 'Across the eyelet, 1 mm to 50 mm.' }),
        below: lengthBetween(mm(1), mm(300)).optional().meta({
          description:
            'From the top edge to the middle of the eyelet; default the shoulder, or the diameter where that is more.',
        }),
      })
      .optional()
      .meta({ description: 'A round hole for string or ribbon; default none.' }),
  }),
  faults,
  outline: (spec): Shape => {
    const [x, y] = [spec.width / 2, spec.height / 2];
    const shoulder = shoulderOf(spec);
    const outer = polygon([
      { x: shoulder - x, y: -y },
      { x: x - shoulder, y: -y },
      { x, y: shoulder - y },
      { x, y },
      { x: -x, y },
      { x: -x, y: shoulder - y },
    ]);
    if (!spec.eyelet) return [outer];
    const radius = spec.eyelet.diameter / 2;
    return [outer, reverse(ellipse({ x: 0, y: depthOf(spec) - y }, radius, radius))];
  },
});
