import { boxOf } from '../folding/flat-faces.ts';
import { boundsOf, boxCorners, overlap } from '../geometry/bounds.ts';
import type { Shape } from '../geometry/contour.ts';
import { flattenShape } from '../geometry/flatten.ts';
import type { Point } from '../geometry/plane.ts';
import { stretchesLeft } from '../knockouts/stretches-left.ts';

/** A straight line on the sheet, in nanometres. */
export type SheetLine = readonly [from: Point, to: Point];

/** How far chords may lie from curves, in nanometres: nobody sees it in a picture. */
const chordError = 50_000;

/** Points that lie nearer to a face's edge than this, in nanometres, lie on it. */
const onEdge = 5000;

/** What is left of a face as polygons, its counters among them. */
export const polygonsOf = (left: Shape): readonly (readonly Point[])[] => flattenShape(left, chordError);

/** Where a face's edge is left by openings. */
export const edgeLeft = (from: Point, to: Point, openings: Shape): readonly SheetLine[] =>
  stretchesLeft(from, to, openings).map(([start, end]) => [along(from, to, start), along(from, to, end)]);

const along = (from: Point, to: Point, share: number): Point => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
});

/** The sides of what is left of a face that do not lie on the face's own edges. @param corners of the whole face */
export function openingEdges(
  polygons: readonly (readonly Point[])[],
  corners: readonly Point[],
): readonly SheetLine[] {
  const sides = corners.map((p, index): SheetLine => [p, corners[(index + 1) % corners.length] ?? p]);
  return polygons.flatMap((polygon) =>
    polygon.flatMap((from, index): SheetLine[] => {
      const to = polygon[(index + 1) % polygon.length] ?? from;
      return sides.some((side) => isOn(side, from) && isOn(side, to)) ? [] : [[from, to]];
    }),
  );
}

/** More boxes than this become one around them all. */
const mostBoxes = 8;

/** Rectangles around the openings in a face, within the rectangle around the face. */
export function openingBoxes(openings: Shape, corners: readonly Point[]): readonly (readonly Point[])[] {
  const face = boxOf(corners);
  const boxes = openings.map((contour) => boundsOf([contour])).filter((bounds) => overlap(bounds, face));
  const all = boxes.length > mostBoxes ? [boxOf(boxes.flatMap(boxCorners))] : boxes;
  return all.map(({ left, right, top, bottom }) =>
    boxCorners({
      left: Math.max(left, face.left),
      right: Math.min(right, face.right),
      top: Math.max(top, face.top),
      bottom: Math.min(bottom, face.bottom),
    }),
  );
}

const isOn = ([p, q]: SheetLine, { x, y }: Point): boolean =>
  Math.abs((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x)) <= onEdge * Math.hypot(q.x - p.x, q.y - p.y);
