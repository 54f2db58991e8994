import { mm } from '../lengths/nanometres.ts';
import type { NestInput } from '../nesting/nest-spec.ts';
import type { Nesting, Placed } from '../nesting/nesting.ts';
import { edgesShared } from '../nesting/shared-edges.ts';
import { extent } from '../solver/sheets.ts';
import { atEdges } from './at-edges.ts';
import type { CutPiece } from './cut-piece.ts';
import { pieceOutline } from './piece-outline.ts';
import type { SetSpec } from './set-spec.ts';
import { type SheetArea, sheetAreas } from './sheet-areas.ts';

/** What one paper's nesting is asked. */
export interface PaperToNest {
  /** Its place in the set's list. */
  readonly paper: number;
  readonly areas: readonly SheetArea[];
  /** Places in the list of pieces, in the order of the nesting's. */
  readonly pieces: readonly number[];
  readonly input: NestInput;
}

/** A paper with its answer. */
export interface NestedPaper extends PaperToNest {
  readonly nesting: Nesting;
}

/** One way of cutting a sheet of the set, used for one sheet or several. */
export interface SetSheet {
  /** Counted from 1 through the whole set. */
  readonly number: number;
  readonly paper: number;
  readonly times: number;
  readonly area: SheetArea;
  readonly faceUp?: 'outside' | 'inside';
  /** From the sheet's top left corner; `piece` is the place in the set's list. */
  readonly placed: readonly Placed[];
  readonly sharedEdges: number;
}

/** Sheets filled in trial, for all papers of a set together; a few seconds. */
export const SET_EVALUATIONS = 8000;

/** Between pieces within one another's boxes, since slivers that are thinner tear and jam; common practice. */
const outlineGap = mm(1);

/** One question for each paper that pieces are cut from. */
export function papersToNest(set: SetSpec, pieces: readonly CutPiece[]): readonly PaperToNest[] {
  const used = [...new Set(pieces.map(({ paper }) => paper))].sort((one, other) => one - other);
  return used.map((paper) => {
    const name = `paper ${paper}`;
    const own = pieces.map((_, index) => index).filter((index) => pieces[index]?.paper === paper);
    const areas = areasFor(
      set,
      paper,
      own.flatMap((index) => pieces[index] ?? []),
    );
    return {
      paper,
      areas,
      pieces: own,
      input: {
        pieces: own.flatMap((index) => pieces[index] ?? []).map((piece) => nestPiece(piece, name)),
        sheets: areas.map(({ reachWidth, reachHeight }) => ({
          paper: name,
          width: reachWidth,
          height: reachHeight,
        })),
        gap: set.gap ?? 0,
        outlineGap,
        seed: set.seed,
        evaluations: Math.max(1, Math.floor(SET_EVALUATIONS / used.length)),
      },
    };
  });
}

/** Sheets with room for the kerf beyond their own edges only where a piece fits in no other way: curves would lose by it. */
function areasFor(set: SetSpec, paper: number, pieces: readonly CutPiece[]): readonly SheetArea[] {
  const sheet = extent(set.papers[paper] ?? {});
  const within = sheetAreas(sheet, set.cutter && { ...set.cutter, kerf: 0 });
  const fits = ({ drawing: { width, height }, turns }: CutPiece) =>
    within.some(
      ({ reachWidth, reachHeight }) =>
        (width <= reachWidth && height <= reachHeight) ||
        (turns === 'quarter' && height <= reachWidth && width <= reachHeight),
    );
  return pieces.every(fits) ? within : sheetAreas(sheet, set.cutter);
}

function nestPiece(
  { name, drawing, quantity, turns, faceUp }: CutPiece,
  paper: string,
): NestInput['pieces'][number] {
  const box = { width: Math.ceil(drawing.width), height: Math.ceil(drawing.height) };
  const outline = pieceOutline(drawing, box);
  return {
    name,
    ...box,
    count: quantity,
    turns,
    paper,
    ...(faceUp === undefined ? {} : { face: faceUp === 'outside' ? 'A' : 'B' }),
    ...(outline === undefined ? {} : { outline: [...outline] }),
  };
}

/** Every different sheet of the set, numbered: paper by paper, as the nestings have them. */
export function sheetsOfSet(papers: readonly NestedPaper[]): readonly SetSheet[] {
  return papers
    .flatMap(({ paper, areas, pieces, input, nesting }) =>
      nesting.layouts.flatMap((layout) => {
        const area = areas[layout.sheet];
        if (!area) return [];
        const onSheet = layout.placed.map((each) => ({
          ...each,
          x: each.x + area.left,
          y: each.y + area.top,
        }));
        const placed = Math.min(area.left, area.top) < 0 ? atEdges(onSheet, area) : onSheet;
        return [
          {
            paper,
            times: layout.times,
            area,
            ...(layout.face === undefined
              ? {}
              : { faceUp: layout.face === 'A' ? ('outside' as const) : ('inside' as const) }),
            placed: placed.map((each) => ({ ...each, piece: pieces[each.piece] ?? 0 })),
            // those that were moved to an edge share less
            sharedEdges: (input.gap ?? 0) === 0 ? edgesShared(placed, input.pieces).length : 0,
          },
        ];
      }),
    )
    .map((sheet, index) => ({ number: index + 1, ...sheet }));
}
