import { drawFinished } from '../../../shared/drawing/draw-folder.ts';
import type { Score } from '../../../shared/drawing/drawing.ts';
import { contourData } from '../../../shared/drawing/path-data.ts';
import type { Placement } from '../../../shared/drawing/placement.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import type { Contour } from '../../../shared/geometry/contour.ts';
import { inMm } from '../../../shared/lengths/show-length.ts';
import { labelOf, namesIn } from '../../../shared/views/part-names.ts';
import { printUps } from '../../../shared/views/sheet-prints.ts';
import type { OpenSheet, Stroke } from './answer.ts';

/** The sheet as it lies before anything is cut, inside face up, with all that is scored and cut. */
export function openSheetOf(folded: Folded): OpenSheet {
  const { plan, program } = folded;
  const drawing = drawFinished(folded);
  const placement: Placement = {
    width: drawing.width,
    height: drawing.height,
    turned: false,
    mirrored: false,
    userUnit: 'mm',
    rootUnit: 'mm',
  };
  const data = (contours: readonly Contour[]): string =>
    contours.map((contour) => contourData(contour, placement)).join(' ');
  const names = namesIn(folded);
  const [room] = plan.arrangement.rooms;
  const blank = { width: inMm(drawing.width), height: inMm(drawing.height) };
  const sheet = room?.name === 'sheet' ? { width: inMm(room.width), height: inMm(room.height) } : blank;
  const cuts = drawing.wholeSheet ? drawing.offcuts : [drawing.outline];
  return {
    sheet: drawing.wholeSheet ? blank : sheet,
    blank,
    valleys: drawing.valleys.flatMap(strokeOf),
    mountains: drawing.mountains.flatMap(strokeOf),
    cuts: cuts.map(({ contours }) => data(contours)).join(' '),
    outline: data(drawing.outline.contours),
    knockouts: drawing.knockouts.map(({ id, contours }) => ({ id, data: data(contours) })),
    panels: program.panels.map(({ name, left, top, right, bottom }) => ({
      label: labelOf(names, name).one,
      x: inMm(left),
      y: inMm(top),
      width: inMm(right - left),
      height: inMm(bottom - top),
    })),
    ups: printUps(plan),
  };
}

function strokeOf({ points }: Score): Stroke[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  return [{ from: [inMm(first.x), inMm(first.y)], to: [inMm(last.x), inMm(last.y)] }];
}
