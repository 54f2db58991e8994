import type { Cut } from '../drawing/drawing.ts';
import { boundsOf, boxCorners } from '../geometry/bounds.ts';
import { intersect } from '../geometry/clip/combine.ts';
import { UNIT } from '../geometry/clip/units.ts';
import type { Contour } from '../geometry/contour.ts';
import { mapPoints, polygon } from '../geometry/walk.ts';
import type { Nm } from '../lengths/nanometres.ts';

interface Size {
  readonly width: Nm;
  readonly height: Nm;
}

/** What of an outline lies on its sheet: where room for the kerf reaches beyond an edge, that edge serves. */
export function onSheet({ id, contours }: Cut, { width, height }: Size): Cut {
  const { left, top, right, bottom } = boundsOf(contours);
  if (left >= 0 && top >= 0 && right <= width && bottom <= height) return { id, contours };
  const sheet = polygon(boxCorners({ left: 0, top: 0, right: width, bottom: height }));
  return { id, contours: intersect(contours, [sheet]).map((contour) => atEdges(contour, { width, height })) };
}

/** Clipping goes by whole units: what lies within two of an edge lies on it. */
const atEdges = (contour: Contour, { width, height }: Size): Contour =>
  mapPoints(contour, ({ x, y }) => ({ x: snapped(x, width), y: snapped(y, height) }));

function snapped(value: number, side: Nm): number {
  if (Math.abs(value) <= 2 * UNIT) return 0;
  return Math.abs(value - side) <= 2 * UNIT ? side : value;
}
