import { signedArea } from '../geometry/area.ts';
import { boxCorners } from '../geometry/bounds.ts';
import { intersect, subtract } from '../geometry/clip/combine.ts';
import { offset } from '../geometry/clip/offset.ts';
import type { Contour, Shape } from '../geometry/contour.ts';
import { moveContour, shift } from '../geometry/move-shape.ts';
import { move } from '../geometry/plane.ts';
import { polygon } from '../geometry/walk.ts';
import { openingsInOrder } from '../knockouts/cut-order.ts';
import type { Paper } from '../knockouts/paper.ts';
import { startedWell } from '../knockouts/start-point.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Convention } from './convention.ts';
import type { Cut, Drawing } from './drawing.ts';
import { drawsOutline } from './draws-outline.ts';

/**
 * A drawing with the openings of its sheet, in cutting order, and with room for what the tool takes away: everything
 * that stays is drawn larger by half of it all around.
 * @param paper absent where nothing is cut out
 * @param kerf width that the tool takes away, in nanometres
 */
export function drawCuts(
  drawing: Drawing,
  paper: Paper | undefined,
  kerf: Nm,
  outline: Convention['outline'],
): Drawing {
  const whole = paper?.kept ?? drawing.outline.contours;
  // what is fitted to an offset lies within a tolerance, which must not take it beyond the sheet
  const sheet =
    kerf === 0 ? whole : intersect(offset(whole, kerf / 2, 'mitred'), [sheetOf(drawing, kerf / 2)]);
  const border = sheet.reduce((largest, contour) =>
    signedArea(contour) > signedArea(largest) ? contour : largest,
  );
  const keepsOutline = kerf === 0 && !paper?.reshaped;
  const cuts: Drawing = {
    ...drawing,
    knockouts: openingsInOrder(sheet).map((contours, index) => ({ id: `knockout-${index + 1}`, contours })),
    ...(keepsOutline
      ? {}
      : { outline: { id: 'outline', contours: [startedWell(border)] }, offcuts: offcutsOf(border, drawing) }),
  };
  // an outline that is drawn outward must not leave the drawing
  return drawsOutline(drawing.wholeSheet, outline) ? widened(cuts, kerf) : cuts;
}

/** What comes off between the sheet's own edges and the outline. */
const offcutsOf = (border: Contour, drawing: Drawing): Cut[] =>
  subtract([sheetOf(drawing, 0)], [border]).map((contour, index) => ({
    id: `offcut-${index + 1}`,
    contours: [contour],
  }));

const sheetOf = ({ width, height }: Drawing, beyond: Nm): Contour =>
  polygon(boxCorners({ left: -beyond, top: -beyond, right: width + beyond, bottom: height + beyond }));

function widened(drawing: Drawing, kerf: Nm): Drawing {
  if (kerf === 0) return drawing;
  const by = shift(kerf / 2, kerf / 2);
  const moved = (shape: Shape) => shape.map((contour) => moveContour(contour, by));
  const cut = ({ id, contours }: Cut): Cut => ({ id, contours: moved(contours) });
  const score = (one: Drawing['valleys'][number]) => ({
    ...one,
    points: one.points.map((point) => move(by, point)),
  });
  return {
    ...drawing,
    width: drawing.width + kerf,
    height: drawing.height + kerf,
    valleys: drawing.valleys.map(score),
    mountains: drawing.mountains.map(score),
    knockouts: drawing.knockouts.map(cut),
    outline: cut(drawing.outline),
    offcuts: drawing.offcuts.map(cut),
    ...(drawing.guide
      ? { guide: drawing.guide.map((zone) => ({ ...zone, contours: moved(zone.contours) })) }
      : {}),
  };
}
