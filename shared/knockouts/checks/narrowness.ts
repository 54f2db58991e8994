import { lengthOf } from '../../geometry/arc-length.ts';
import { areaOf } from '../../geometry/area.ts';
import { boundsOf, overlap } from '../../geometry/bounds.ts';
import { intersect } from '../../geometry/clip/combine.ts';
import { offset } from '../../geometry/clip/offset.ts';
import { thinParts } from '../../geometry/clip/thin-parts.ts';
import type { Shape } from '../../geometry/contour.ts';
import { polygon } from '../../geometry/walk.ts';
import { grownBounds } from '../bounds.ts';

/** Halvings of the search for a width: to a 64th of where it began. */
const HALVINGS = 6;

/** The largest width up to `most` for which something does not yet hold. */
function widest(most: number, holds: (width: number) => boolean): number {
  let [least, greatest] = [0, most];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (least + greatest) / 2;
    if (holds(middle)) greatest = middle;
    else least = middle;
  }
  return greatest;
}

/**
 * How wide a figure is at a neck where it is narrower than `most`: the least width whose opening loses the neck.
 * @param neck outline of what an opening with `most` loses
 */
export function widthAtNeck(figure: Shape, neck: Shape, most: number): number {
  const { left, top, right, bottom } = grownBounds(boundsOf(neck), 4 * most);
  const around = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const near = intersect(figure, [polygon(around)]);
  const box = boundsOf(neck);
  return widest(most, (width) =>
    thinParts(near, width).some(
      ({ kind, outline }) =>
        kind === 'neck' && overlap(boundsOf(outline), box) && intersect(outline, neck).length > 0,
    ),
  );
}

/** How wide a figure is where it is widest, if that is less than `most`. */
export const greatestWidth = (figure: Shape, most: number): number =>
  widest(most, (width) => offset(figure, -width / 2).length === 0);

/** Length and width of a strip: the sides of the rectangle with the same area and the same way around. */
function sidesOf(strip: Shape): readonly [length: number, width: number] {
  const half = strip.reduce((sum, contour) => sum + lengthOf(contour), 0) / 2;
  const root = Math.sqrt(Math.max(0, half * half - 4 * areaOf(strip)));
  return [(half + root) / 2, (half - root) / 2];
}

/** How many times as long as wide a strip is. */
export function slenderness(strip: Shape): number {
  const [length, width] = sidesOf(strip);
  return length / width;
}

/** Of a strip that is bent, the ends are at least this share of its length apart: a half ring's are 2/π. */
const leastSpan = 0.5;

/** Whether a neck is one strip, and not a net of webs between many openings. */
export function isStrip(neck: Shape): boolean {
  const { left, top, right, bottom } = boundsOf(neck);
  return neck.length === 1 && Math.hypot(right - left, bottom - top) >= leastSpan * sidesOf(neck)[0];
}
