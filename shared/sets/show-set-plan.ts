import { inMetres, showLength } from '../lengths/show-length.ts';
import type { Placed } from '../nesting/nesting.ts';
import { warningsOf } from '../plan-reply/warnings.ts';
import { extent } from '../solver/sheets.ts';
import { styleOf } from '../styles/registry.ts';
import type { CutPiece } from './cut-piece.ts';
import { kitWeight } from './kit-weight.ts';
import { ribbonNeeded, tapeNeeded } from './lengths-needed.ts';
import { liesMirrored, lying } from './lying.ts';
import { type NestedPaper, type SetSheet, sheetsOfSet } from './nested-paper.ts';
import { paperTitle } from './paper-title.ts';
import { postHints } from './post-classes.ts';
import { setCautions } from './set-cautions.ts';
import { setPath } from './set-path.ts';
import type { SetPlanReply } from './set-plan-reply.ts';
import type { SetSpec } from './set-spec.ts';
import type { SheetArea } from './sheet-areas.ts';
import { sheetFile } from './sheet-file.ts';
import { costPerKit, shoppingList } from './shopping.ts';

/** A set with everything that was found for it. */
export interface PlannedSet {
  readonly set: SetSpec;
  readonly pieces: readonly CutPiece[];
  readonly papers: readonly NestedPaper[];
}

const shownSize = ({ width, height }: { readonly width: number; readonly height: number }) => ({
  width: showLength(width),
  height: showLength(height),
});

/** A piece's box, without the room for the kerf that lies beyond the sheet's edges. */
function boxOnSheet(placed: Placed, { width, height }: SheetArea): Placed {
  const [left, top] = [Math.max(0, placed.x), Math.max(0, placed.y)];
  return {
    ...placed,
    x: left,
    y: top,
    width: Math.min(width, placed.x + placed.width) - left,
    height: Math.min(height, placed.y + placed.height) - top,
  };
}

function showLayout(
  set: SetSpec,
  pieces: readonly CutPiece[],
  { number, times, area, faceUp, sharedEdges, placed }: SetSheet,
): SetPlanReply['papers'][number]['layouts'][number] {
  const sheet = lying(area, liesMirrored(set));
  return {
    number,
    file: sheetFile(number),
    times,
    sheet: shownSize(sheet),
    turned: area.turned,
    ...(faceUp === undefined ? {} : { faceUp }),
    sharedCuts: sharedEdges,
    placed: placed.map((each) => {
      const { x, y, turn, ...size } = sheet.place(boxOnSheet(each, area));
      return {
        piece: pieces[each.piece]?.name ?? '',
        x: showLength(x),
        y: showLength(y),
        ...shownSize(size),
        turn,
      };
    }),
  };
}

/** A planned set as its reply tells it. */
export function showSetPlan({ set, pieces, papers }: PlannedSet): SetPlanReply {
  const sheets = sheetsOfSet(papers);
  const ribbon = ribbonNeeded(set, pieces);
  const tape = tapeNeeded(pieces);
  const posted = pieces.find(({ name }) => name === set.post?.piece)?.closed;
  const minutes = minutesOf(pieces, ({ spec }) => spec.perKit);
  return {
    kits: set.kits,
    spoilage: set.spoilage,
    pieces: pieces.map((piece, index) => showPiece(set, piece, index)),
    papers: papers.map((paper) => showPaper(set, pieces, paper, sheets)),
    sheets: papers.reduce((sum, { nesting }) => sum + nesting.sheets, 0),
    differentSheets: sheets.length,
    ...(ribbon
      ? { ribbon: { each: showLength(ribbon.each), count: ribbon.count, metres: inMetres(ribbon.total) } }
      : {}),
    ...(tape > 0 ? { tape: { metres: inMetres(tape) } } : {}),
    shopping: [...shoppingList(set, pieces, papers)],
    perKit: {
      cost: [...costPerKit(set, pieces, papers)],
      unpriced: unpriced(set, papers, ribbon !== undefined, tape > 0),
      ...(minutes === undefined ? {} : { minutes }),
      ...weight(set, pieces),
    },
    ...(minutes === undefined ? {} : { minutes: minutesOf(pieces, ({ quantity }) => quantity) }),
    ...(posted
      ? {
          post: postHints(posted, kitWeight(set, pieces).grammes).map((hint) => ({
            ...hint,
            notes: [...hint.notes],
          })),
        }
      : {}),
    cautions: [...setCautions(set, sheets)],
  };
}

/** Undefined where no piece says how long it takes. */
function minutesOf(pieces: readonly CutPiece[], times: (piece: CutPiece) => number): number | undefined {
  const timed = pieces.flatMap((piece) =>
    piece.spec.minutes === undefined ? [] : [piece.spec.minutes * times(piece)],
  );
  return timed.length === 0 ? undefined : Number(timed.reduce((sum, each) => sum + each, 0).toFixed(2));
}

function weight(
  set: SetSpec,
  pieces: readonly CutPiece[],
): Pick<SetPlanReply['perKit'], 'grammes' | 'unweighed'> {
  const { grammes, unknown } = kitWeight(set, pieces);
  return { ...(unknown.length === pieces.length ? {} : { grammes }), unweighed: [...unknown] };
}

const unpriced = (set: SetSpec, papers: readonly NestedPaper[], ribbon: boolean, tape: boolean): string[] => [
  ...papers.flatMap(({ paper }) => (set.papers[paper]?.price ? [] : [paperTitle(set, paper)])),
  ...(ribbon && !(set.ribbon?.price && set.ribbon.metres) ? ['ribbon'] : []),
  ...(tape && !(set.tape?.price && set.tape.metres) ? ['tape'] : []),
];

function showPiece(set: SetSpec, piece: CutPiece, index: number): SetPlanReply['pieces'][number] {
  const { name, spec, blank, closed, quantity, turns, faceUp, folded } = piece;
  return {
    name,
    title: 'make' in spec ? styleOf(spec.make).title : 'cut' in spec ? 'rectangle' : piece.drawing.title,
    paper: paperTitle(set, piece.paper),
    blank: shownSize(blank),
    ...(closed ? { closed: { ...shownSize(closed), thickness: showLength(closed.thickness) } } : {}),
    perKit: spec.perKit,
    quantity,
    turns,
    ...(faceUp === undefined ? {} : { faceUp }),
    warnings: (folded ? warningsOf(folded) : []).map((warning) => ({
      ...warning,
      path: setPath(warning.path, index, piece.paper),
    })),
  };
}

function showPaper(
  set: SetSpec,
  pieces: readonly CutPiece[],
  { paper, nesting }: NestedPaper,
  sheets: readonly SetSheet[],
): SetPlanReply['papers'][number] {
  const sheet = extent(set.papers[paper] ?? {});
  const own = sheets.filter((each) => each.paper === paper);
  const used = own.reduce(
    (sum, { placed, times }) =>
      sum + times * placed.reduce((area, each) => area + (pieces[each.piece]?.area ?? 0), 0),
    0,
  );
  const whole = nesting.sheets * sheet.width * sheet.height;
  const { sheets: count, bound, gap, proved, stopped, offcuts } = nesting;
  return {
    paper: paperTitle(set, paper),
    sheet: shownSize(sheet),
    sheets: count,
    bound,
    gap,
    proved,
    stopped,
    utilisation: whole === 0 ? 0 : Number((used / whole).toFixed(4)),
    layouts: own.map((each) => showLayout(set, pieces, each)),
    offcuts: offcuts.map(({ width, height, count: times }) => ({
      ...shownSize({ width, height }),
      count: times,
    })),
  };
}
