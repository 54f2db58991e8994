import { type Box, posesWithin } from './box.ts';
import { gcdOf } from './gcd.ts';
import type { Face, NestSpec } from './nest-spec.ts';

/** A sheet to fill, by the face that lies up where pieces ask for one. */
export interface Room {
  /** Number of the sheet in the spec. */
  readonly sheet: number;
  readonly face?: Face;
  /** Inside the margins, with one gap more on the right and below: every box carries its own gap there. */
  readonly width: number;
  readonly height: number;
  /** Of the whole sheet. */
  readonly area: number;
}

/** All pieces of one paper, in the largest unit in which every length is whole: the less there is to search. */
export interface Job {
  readonly paper: string;
  /** Nanometres in a unit. */
  readonly unit: number;
  readonly boxes: readonly Box[];
  /** Number in the spec of each box's piece. */
  readonly pieceOf: readonly number[];
  readonly faceOf: readonly (Face | undefined)[];
  readonly rooms: readonly Room[];
  /** Sheets there are, by number of the sheet in the spec. */
  readonly stock: ReadonlyMap<number, number>;
  /** Numbers of the pieces that lie on no sheet. */
  readonly tooLarge: readonly number[];
}

/** Whether a box may lie on a room's sheet, as far as faces go. */
export const mayLie = (job: Job, room: Room, box: number): boolean => {
  const face = job.faceOf[box];
  return face === undefined || room.face === undefined || face === room.face;
};

/** One job for each paper, in the order in which pieces name them. */
export function jobsOf(spec: NestSpec): readonly Job[] {
  const papers = [...new Set(spec.pieces.map(({ paper }) => paper))];
  return papers.map((paper) => jobOf(spec, paper));
}

function jobOf(spec: NestSpec, paper: string): Job {
  const pieces = spec.pieces
    .map((piece, number) => ({ piece, number }))
    .filter((each) => each.piece.paper === paper);
  const sheets = spec.sheets
    .map((sheet, number) => ({ sheet, number }))
    .filter((each) => each.sheet.paper === paper);
  const faces = [...new Set(pieces.flatMap(({ piece }) => piece.face ?? []))].sort();
  const nmBoxes = pieces.map(({ piece }) => ({
    width: piece.width + spec.gap,
    height: piece.height + spec.gap,
    count: piece.count,
    turns: piece.turns === 'quarter',
  }));
  const nmRooms = sheets.flatMap(({ sheet, number }) => {
    const width = sheet.width - 2 * sheet.margin + spec.gap;
    const height = sheet.height - 2 * sheet.margin + spec.gap;
    if (sheet.count === 0 || width <= spec.gap || height <= spec.gap) return [];
    const room = { sheet: number, width, height, area: sheet.width * sheet.height };
    return faces.length === 0 ? [room] : faces.map((face) => ({ ...room, face }));
  });
  const fits = nmBoxes.map((box) =>
    nmRooms.some((room) => posesWithin(box, room.width, room.height).length > 0),
  );
  const kept = pieces.map((_, index) => index).filter((index) => fits[index]);
  const boxes = kept.map((index) => nmBoxes[index] as Box);
  const unit = gcdOf(boxes.flatMap((box) => [box.width, box.height]));
  return {
    paper,
    unit,
    boxes: boxes.map((box) => ({ ...box, width: box.width / unit, height: box.height / unit })),
    pieceOf: kept.map((index) => pieces[index]?.number ?? 0),
    faceOf: kept.map((index) => pieces[index]?.piece.face),
    // edges lie at sums of sides, so that what a sheet has beyond a whole number of units is of no use
    rooms: nmRooms.map((room) => ({
      ...room,
      width: Math.floor(room.width / unit),
      height: Math.floor(room.height / unit),
      area: room.area / unit / unit,
    })),
    stock: new Map(sheets.map(({ sheet, number }) => [number, sheet.count ?? Number.POSITIVE_INFINITY])),
    tooLarge: pieces.filter((_, index) => !fits[index]).map(({ number }) => number),
  };
}
