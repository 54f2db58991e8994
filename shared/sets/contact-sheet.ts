import type { Cut } from '../drawing/drawing.ts';
import { flatten } from '../geometry/flatten.ts';
import { mm } from '../lengths/nanometres.ts';
import { inMm, writeLength } from '../lengths/show-length.ts';
import type { FaceMark, LineMark, Mark, PagePoint, Picture, TextMark } from '../views/picture.ts';
import { widthOf } from '../views/text-block.ts';
import type { CutPiece } from './cut-piece.ts';
import { labelSpot } from './label-spot.ts';
import { liesMirrored, lying } from './lying.ts';
import type { SetSheet } from './nested-paper.ts';
import { paperTitle } from './paper-title.ts';
import { placedDrawing } from './placed-drawing.ts';
import type { SetSpec } from './set-spec.ts';

/** Of the page, in millimetres. */
const column = 90;
const row = 108;
const margin = 8;
const columns = 3;
const head = 16;

/** How far curves may be off on the real sheet. */
const smallest = mm(0.2);

/** A small picture of every different sheet with its number, how often it is cut, and what lies where. */
export function contactSheet(
  set: SetSpec,
  pieces: readonly CutPiece[],
  sheets: readonly SetSheet[],
): Picture {
  const across = Math.max(1, Math.min(columns, sheets.length));
  const rows = Math.ceil(sheets.length / across);
  const letters = new Map(pieces.map((_, index) => [index, letterOf(index)]));
  const legend = pieces.map(
    ({ name, quantity, spec, paper }, index) =>
      `${letters.get(index)}  ${name}: ${quantity} from ${paperTitle(set, paper)}, ${spec.perKit} in each kit`,
  );
  const legendTop = head + rows * row + 4;
  const height = legendTop + legend.length * 6 + margin;
  const kits = `${set.kits} ${set.kits === 1 ? 'kit' : 'kits'}`;
  const title = set.title === undefined ? `All sheets for ${kits}` : `${set.title}: all sheets for ${kits}`;
  return {
    name: 'contact-sheet',
    title,
    description: `${sheets.length} different sheets. ${legend.join('. ')}.`,
    width: across * column + 2 * margin,
    height,
    marks: [
      text(title, { x: margin, y: margin }, Math.min(5, (across * column) / widthOf(title, 1, true)), true),
      ...sheets.flatMap((sheet, index) =>
        oneSheet(set, pieces, sheet, letters, {
          x: margin + (index % across) * column,
          y: head + Math.floor(index / across) * row,
        }),
      ),
      ...legend.map((words, index) => text(words, { x: margin, y: legendTop + index * 6 }, 3.4)),
    ],
  };
}

/** A, B … Z, A1, B1 … */
function letterOf(index: number): string {
  const round = Math.floor(index / 26);
  return `${String.fromCharCode(65 + (index % 26))}${round === 0 ? '' : round}`;
}

function oneSheet(
  set: SetSpec,
  pieces: readonly CutPiece[],
  { number, paper, times, area, placed, faceUp }: SetSheet,
  letters: ReadonlyMap<number, string>,
  corner: PagePoint,
): readonly Mark[] {
  const room = { width: column - 8, height: row - 24 };
  const lies = lying(area, liesMirrored(set));
  const scale = Math.min(room.width / inMm(lies.width), room.height / inMm(lies.height));
  const at = (x: number, y: number): PagePoint => {
    const point = lies.point({ x, y });
    return { x: corner.x + scale * inMm(point.x), y: corner.y + 12 + scale * inMm(point.y) };
  };
  const box = (x: number, y: number, width: number, height: number): readonly PagePoint[] => [
    at(x, y),
    at(x + width, y),
    at(x + width, y + height),
    at(x, y + height),
  ];
  const loop = (points: readonly PagePoint[]) => [...points, ...points.slice(0, 1)];
  const sheetBox = box(0, 0, area.width, area.height);
  const lines = (cuts: readonly Cut[]) =>
    cuts.flatMap(({ contours }) =>
      contours.map((contour) => flatten(contour, smallest).map((point) => at(point.x, point.y))),
    );
  const drawn = placed.flatMap((each, index) => {
    const piece = pieces[each.piece];
    if (!piece) return [];
    const { outline, knockouts, valleys, mountains } = placedDrawing(
      piece.drawing,
      each,
      `piece ${index + 1}`,
    );
    return [
      {
        part: `piece ${index + 1}`,
        letter: letters.get(each.piece) ?? '',
        cuts: lines([outline, ...knockouts]),
        scores: [...valleys, ...mountains].map(({ points }) => points.map((point) => at(point.x, point.y))),
      },
    ];
  });
  const faces = drawn.map(
    ({ part, cuts }): FaceMark => ({
      kind: 'face',
      part,
      paper: faceUp ?? 'inside',
      outline: cuts[0] ?? [],
      left: cuts,
    }),
  );
  const line = (kind: LineMark['line'], lines: LineMark['lines']): readonly Mark[] =>
    lines.length === 0 ? [] : [{ kind: 'line', line: kind, lines }];
  const labels = drawn.map(({ letter, cuts }): TextMark => {
    const { room, ...spot } = labelSpot(cuts);
    return {
      kind: 'text',
      text: letter,
      at: spot,
      size: Math.max(1.6, Math.min(5, room)),
      anchor: 'middle',
      bold: true,
      plate: true,
    };
  });
  const size = `${writeLength(lies.width, set.measure)} × ${writeLength(lies.height, set.measure)}`;
  return [
    text(`Sheet ${number}, ${times} ×`, { x: corner.x, y: corner.y + 2 }, 4, true),
    text(
      `${paperTitle(set, paper)}, ${size}${faceUp === undefined ? '' : `, ${faceUp} up`}`,
      { x: corner.x, y: corner.y + 8 },
      3,
    ),
    ...line('measure', [loop(sheetBox)]),
    ...faces,
    ...line(
      'score',
      drawn.flatMap(({ scores }) => scores),
    ),
    ...line(
      'edge',
      drawn.flatMap(({ cuts }) => cuts.map(loop)),
    ),
    ...labels,
  ];
}

const text = (words: string, at: PagePoint, size: number, bold = false): TextMark => ({
  kind: 'text',
  text: words,
  at,
  size,
  anchor: 'start',
  ...(bold ? { bold } : {}),
});
