import type { Cut, Drawing, GuideZone, Score } from '../drawing/drawing.ts';
import { moveShape, shift, turn } from '../geometry/move-shape.ts';
import { compose, type Isometry, move } from '../geometry/plane.ts';
import type { Placed } from '../nesting/nesting.ts';

/** The motion from a drawing of a size to where it lies on a sheet, turned clockwise. */
export function motionTo(
  { x, y, turn: degrees }: Pick<Placed, 'x' | 'y' | 'turn'>,
  { width, height }: Pick<Drawing, 'width' | 'height'>,
): Isometry {
  // after the turn about the origin the drawing's box is brought back to x, y
  const back = {
    0: shift(x, y),
    90: shift(x + height, y),
    180: shift(x + width, y + height),
    270: shift(x, y + width),
  }[degrees];
  return compose(back, turn(degrees));
}

/** What of a drawing a sheet shows, in the sheet's own coordinates. */
export type PlacedDrawing = Pick<Drawing, 'valleys' | 'mountains' | 'knockouts' | 'outline' | 'guide'>;

/** A drawing where it lies on its sheet; its parts are named after the piece. */
export function placedDrawing(drawing: Drawing, placed: Placed, prefix: string): PlacedDrawing {
  const by = motionTo(placed, drawing);
  const score = (one: Score): Score => ({
    ...one,
    id: `${prefix}-${one.id}`,
    points: one.points.map((point) => move(by, point)),
  });
  const cut = ({ id, contours }: Cut): Cut => ({ id: `${prefix}-${id}`, contours: moveShape(contours, by) });
  return {
    valleys: drawing.valleys.map(score),
    mountains: drawing.mountains.map(score),
    knockouts: drawing.knockouts.map(cut),
    outline: cut(drawing.outline),
    ...(drawing.guide
      ? {
          guide: drawing.guide.map(
            (zone): GuideZone => ({
              ...zone,
              id: `${prefix}-${zone.id}`,
              contours: moveShape(zone.contours, by),
            }),
          ),
        }
      : {}),
  };
}
