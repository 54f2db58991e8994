import { applyConvention } from '../drawing/apply-convention.ts';
import type { Convention } from '../drawing/convention.ts';
import type { Cut, Drawing } from '../drawing/drawing.ts';
import type { Figure, FigureGroup, FigurePath } from '../drawing/figure.ts';
import { LinesOnce, type OpenLine } from '../drawing/lines-once.ts';
import { openLineData } from '../drawing/path-data.ts';
import type { Placement } from '../drawing/placement.ts';
import { boxCorners } from '../geometry/bounds.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { CutPiece } from './cut-piece.ts';
import { liesMirrored } from './lying.ts';
import type { SetSheet } from './nested-paper.ts';
import { onSheet } from './on-sheet.ts';
import { placedDrawing } from './placed-drawing.ts';

export interface SheetWords {
  readonly title: string;
  readonly description: string;
}

/**
 * One sheet of a set in a convention: every piece where it lies. A line that two pieces share is cut once, and none is cut
 * along the sheet's own edge unless outlines are asked for always; so the cuts of neighbours are open lines. Filled
 * outlines stay whole.
 */
export function sheetFigure(
  sheet: SetSheet,
  pieces: readonly CutPiece[],
  words: SheetWords,
  convention: Convention = {},
  kerf: Nm = 0,
): Figure {
  const { width, height, left, top, turned } = sheet.area;
  const placed = sheet.placed.flatMap((each, index) => {
    const piece = pieces[each.piece];
    return piece ? [placedDrawing(piece.drawing, each, `piece-${index + 1}`)] : [];
  });
  // with a kerf a line along the edge is a cut, unless room for it lies beyond the edge
  const reachesBeyond = Math.min(left, top) < 0;
  const outlines = placed.map(({ outline }) =>
    reachesBeyond ? onSheet(outline, { width, height }) : outline,
  );
  const { closed, open } = outlinesOf(
    convention.outline === 'never' ? [] : outlines,
    convention,
    convention.outline === 'always' || (kerf > 0 && !reachesBeyond) ? undefined : { width, height },
  );
  const drawing: Drawing = {
    ...words,
    width,
    height,
    valleys: placed.flatMap(({ valleys }) => valleys),
    mountains: placed.flatMap(({ mountains }) => mountains),
    knockouts: placed.flatMap(({ knockouts }) => knockouts),
    guide: placed.flatMap(({ guide = [] }) => guide),
    outline: { id: 'sheet', contours: [] },
    offcuts: closed,
    wholeSheet: true,
    turned,
  };
  const figure = applyConvention(drawing, { ...convention, outline: 'auto' });
  const placement: Placement = {
    width,
    height,
    turned,
    mirrored: liesMirrored({ convention }),
    userUnit: convention.userUnit ?? 'mm',
    rootUnit: convention.rootUnit ?? 'mm',
  };
  const paths = open.flatMap(({ id, lines }): FigurePath[] => {
    const data = lines.map((line) => openLineData(line, placement)).filter((text) => text !== '');
    return data.length === 0 ? [] : [{ id, data: data.join(' ') }];
  });
  return {
    ...figure,
    groups: figure.groups.map(
      (group): FigureGroup => (group.id === 'cut' ? { ...group, paths: [...group.paths, ...paths] } : group),
    ),
  };
}

interface OpenCut {
  readonly id: string;
  readonly lines: readonly OpenLine[];
}

function outlinesOf(
  outlines: readonly Cut[],
  convention: Convention,
  edge: { readonly width: Nm; readonly height: Nm } | undefined,
): { readonly closed: readonly Cut[]; readonly open: readonly OpenCut[] } {
  if (convention.layers?.cut?.paint === 'fill') return { closed: outlines, open: [] };
  const once = new LinesOnce();
  if (edge) takeEdge(once, edge);
  const closed: Cut[] = [];
  const open: OpenCut[] = [];
  for (const { id, contours } of outlines) {
    const left = contours.map((contour) => once.leftOf(contour));
    const whole = left.flatMap((each) => ('whole' in each ? [each.whole] : []));
    const lines = left.flatMap((each) => ('lines' in each ? each.lines : []));
    if (whole.length > 0) closed.push({ id, contours: whole });
    if (lines.length > 0) open.push({ id: whole.length > 0 ? `${id}-rest` : id, lines });
  }
  return { closed, open };
}

function takeEdge(once: LinesOnce, { width, height }: { readonly width: Nm; readonly height: Nm }): void {
  const corners = boxCorners({ left: 0, top: 0, right: width, bottom: height });
  for (const [index, from] of corners.entries()) once.take(from, corners[(index + 1) % 4] ?? from);
}
