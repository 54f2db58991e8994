import type { Drawing } from '../drawing/drawing.ts';
import { areaOf } from '../geometry/area.ts';
import { flatten } from '../geometry/flatten.ts';
import type { Point } from '../geometry/plane.ts';
import type { Nm } from '../lengths/nanometres.ts';

/** How far chords may lie from curves, nm: far less than the space that outlines keep. */
const chordError = 5000;

/** A piece that fills so much of its box is nested as the box, which costs far less. */
const nearlyItsBox = 0.95;

/** What a nesting takes of an outline. */
const mostCorners = 1000;

/**
 * The corners of a piece's outline in whole nanometres, for a box of whole nanometres.
 * @returns undefined where its box says as much: it is all but a rectangle, in several parts, or of too many corners
 */
export function pieceOutline(
  { outline: { contours }, ...drawing }: Pick<Drawing, 'outline' | 'width' | 'height'>,
  box: { readonly width: Nm; readonly height: Nm },
): readonly Point[] | undefined {
  const [contour, ...others] = contours;
  if (!contour || others.length > 0) return undefined;
  if (areaOf(contours) > nearlyItsBox * drawing.width * drawing.height) return undefined;
  const points = flatten(contour, chordError);
  if (points.length > mostCorners) return undefined;
  const across = snapped(
    points.map(({ x }) => x),
    box.width,
  );
  const along = snapped(
    points.map(({ y }) => y),
    box.height,
  );
  return points.map((_, index) => ({ x: across[index] ?? 0, y: along[index] ?? 0 }));
}

/** Whole coordinates; the least and the largest at the box's sides, which chords of a curve do not quite reach. */
function snapped(values: readonly number[], side: Nm): readonly Nm[] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return values.map((value) => {
    if (value === least) return 0;
    return value === most ? side : Math.min(side, Math.max(0, Math.round(value)));
  });
}
