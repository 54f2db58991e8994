import { type Bounds, boundsOf } from '../geometry/bounds.ts';
import type { Shape } from '../geometry/contour.ts';
import { moveShape, shift } from '../geometry/move-shape.ts';
import type { Anchor } from './anchors.ts';
import type { Place } from './places.ts';

/** How far something is moved, in nanometres, as the reader sees it. */
export interface Offset {
  readonly left?: number | undefined;
  readonly right?: number | undefined;
  readonly up?: number | undefined;
  readonly down?: number | undefined;
}

/** Where an anchor lies on a rectangle, as shares of its width and height. */
function sharesOf(anchor: Anchor): readonly [across: number, along: number] {
  const words = anchor.split(' ');
  const share = (first: string, last: string) => (words.includes(first) ? 0 : words.includes(last) ? 1 : 0.5);
  return [share('left', 'right'), share('top', 'bottom')];
}

export const extentOf = ({ left, top, right, bottom }: Bounds) => ({
  width: right - left,
  height: bottom - top,
});

/**
 * A figure moved so that a side, corner or middle of its bounds comes to the same one of a place, then by an offset;
 * in the place's coordinates, from its top left corner as it is seen.
 */
export function anchored(shape: Shape, place: Place, anchor: Anchor = 'centre', offset: Offset = {}): Shape {
  const bounds = boundsOf(shape);
  const [across, along] = sharesOf(anchor);
  const [room, own] = [extentOf(place), extentOf(bounds)];
  const x = across * (room.width - own.width) - bounds.left + (offset.right ?? 0) - (offset.left ?? 0);
  const y = along * (room.height - own.height) - bounds.top + (offset.down ?? 0) - (offset.up ?? 0);
  return moveShape(shape, shift(x, y));
}
