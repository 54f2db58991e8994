import { type Convex, centreOf, clipToBox, depthIn, signedArea } from './convex.ts';
import type { PagePoint } from './picture.ts';

/** A convex part of a region with room for a mark, and its middle. */
export interface Space {
  readonly piece: Convex;
  readonly centre: PagePoint;
  /** Millimetres from the middle to the nearest edge. */
  readonly depth: number;
}

/** Regions of so many slanting pieces that more rectangles than this would be tried have no good one. */
const mostBoxes = 4000;

/** Coordinates that differ by less than this, in millimetres, are one. */
const same = 0.01;

/**
 * Where a region has most room: its thickest upright rectangle, the largest of those that are equally thick; or
 * its thickest piece where no rectangle is as good, as in a region seen at a slant.
 */
export function roomiest(pieces: readonly Convex[]): Space | undefined {
  const thickest = pieces.map(spaceIn).toSorted((one, other) => other.depth - one.depth)[0];
  const rectangle = largestRectangle(pieces);
  if (!rectangle) return thickest;
  const space = spaceIn(rectangle);
  return thickest === undefined || space.depth > thickest.depth * 0.75 ? space : thickest;
}

function spaceIn(piece: Convex): Space {
  const centre = centreOf(piece);
  return { piece, centre, depth: depthIn(piece, centre) };
}

function largestRectangle(pieces: readonly Convex[]): Convex | undefined {
  const corners = pieces.flat();
  const columns = spans(corners.map(({ x }) => x));
  const rows = spans(corners.map(({ y }) => y));
  if (columns.length * rows.length > mostBoxes) return undefined;
  const boxes = columns.flatMap(([left, right]) =>
    rows.map(([top, bottom]) => ({ left, right, top, bottom, width: right - left, height: bottom - top })),
  );
  const thickness = ({ width, height }: (typeof boxes)[number]) => Math.min(width, height);
  const found = boxes
    .toSorted(
      (one, other) =>
        // to a tenth, so that rounding never decides between a rectangle and its mirror image
        Math.round(10 * (thickness(other) - thickness(one))) ||
        other.width * other.height - one.width * one.height,
    )
    .find((box) => filled(box, pieces));
  if (!found) return undefined;
  const { left, right, top, bottom } = found;
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

type Span = readonly [number, number];

function spans(values: readonly number[]): readonly Span[] {
  const stops = values
    .toSorted((one, other) => one - other)
    .filter((value, index, sorted) => index === 0 || value - (sorted[index - 1] ?? value) > same);
  return stops.flatMap((from, index) => stops.slice(index + 1).map((to): Span => [from, to]));
}

function filled(
  box: { left: number; right: number; top: number; bottom: number; width: number; height: number },
  pieces: readonly Convex[],
): boolean {
  const empty = pieces.reduce(
    (left, piece) => left - Math.abs(signedArea(clipToBox(piece, box))),
    box.width * box.height,
  );
  return empty < same * (box.width + box.height);
}
