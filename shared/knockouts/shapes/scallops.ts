import { arcCurves } from '../../geometry/arcs.ts';
import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/plane.ts';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';

/*
 * A scalloped edge is the outline of equal discs in a closed row. Discs a step apart of radius step / √3 meet at
 * 30° above the row, and on a straight row show an arc of 120°: the notch between two scallops is 60° wide, so that
 * paper holds there. With half discs its tip would have no width.
 */

/** Radius of the discs for a step of 1. */
export const DISC = 1 / Math.sqrt(3);

/** Degrees of a disc that show on a straight row, each side of outward. */
const HALF_ARC = 60;

export const SCALLOP = mm(8);

export const scallop = lengthBetween(mm(2), mm(100)).optional().meta({
  description: 'How wide a scallop is, 2 mm to 100 mm, about: a whole number of them fits; default 8 mm.',
});

/** A disc of a scalloped edge. */
export interface Disc {
  readonly centre: Point;
  /** Which way is outward where its arc begins and where it ends, in degrees from x clockwise as seen. */
  readonly from: number;
  readonly to: number;
}

/** The outline of discs in a closed row, clockwise as seen. */
export function scalloped(discs: readonly Disc[], radius: number): Contour {
  const stretches = discs.flatMap(({ centre, from, to }) =>
    arcCurves({ centre, radiusX: radius, radiusY: radius, from: from - HALF_ARC, to: to + HALF_ARC }),
  );
  const last = stretches.at(-1);
  if (!last) throw new Error('a scalloped edge has discs');
  return { start: last.to, stretches };
}
