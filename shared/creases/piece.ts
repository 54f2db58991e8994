import {
  compose,
  distanceFrom,
  type Isometry,
  inverse,
  type Line,
  move,
  type Point,
  reflection,
  rounded,
  turnsOver,
} from '../geometry/plane.ts';
import type { Letter } from './crease-pattern.ts';
import type { FoldStep } from './fold-program.ts';

/** What an edge of a piece is: border, flat, or the crease that a fold left. */
export interface Crease {
  readonly letter: Letter;
  readonly foldAngle: number;
  readonly step?: number;
}

export const border: Crease = Object.freeze({ letter: 'B', foldAngle: 0 });
export const flat: Crease = Object.freeze({ letter: 'F', foldAngle: 0 });

/** A convex piece of the sheet that lies flat: corner i and the edge from it to the next, and where it lies now. */
export interface Piece {
  readonly corners: readonly Point[];
  readonly creases: readonly Crease[];
  readonly lies: Isometry;
  /** The panel that it is part of, where that is known before it is cut up. */
  readonly panel: string | undefined;
  /** Index of the last fold that moved it; -1 before any does. */
  readonly movedAt: number;
}

/** Nearer to a fold line than this, in nanometres, is on it. */
const ON_LINE = 0.5;

/** The crease that a fold leaves in paper that lies so. */
export function creaseOf(step: FoldStep, index: number, lies: Isometry): Crease {
  const toward = (step.direction === 'toward') !== turnsOver(lies);
  return { letter: toward ? 'V' : 'M', foldAngle: toward ? step.angle : -step.angle, step: index };
}

/** Whether a point of the sheet lies on a fold's line by now. */
export const isOnLine = ({ line }: FoldStep, lies: Isometry, point: Point): boolean =>
  Math.abs(distanceFrom(line, move(lies, point))) <= 2 * ON_LINE;

/** What a fold makes of a piece: itself, as it lay or moved, or its two halves. */
export function foldPiece(piece: Piece, step: FoldStep, index: number): Piece[] {
  const { corners, creases, panel, movedAt } = piece;
  if (step.only && !step.only.includes(panel ?? '')) return [piece];
  const back = inverse(piece.lies);
  const line: Line = { from: move(back, step.line.from), to: move(back, step.line.to) };
  const sign = Math.sign(distanceFrom(line, move(back, step.moving)));
  const sides = corners.map((corner) => {
    const distance = sign * distanceFrom(line, corner);
    return Math.abs(distance) < ON_LINE ? 0 : Math.sign(distance);
  });
  if (!sides.includes(1)) return [piece];
  const lies = step.angle === 180 ? compose(reflection(step.line), piece.lies) : piece.lies;
  if (!sides.includes(-1)) return [{ corners, creases, lies, panel, movedAt: index }];
  const crease = creaseOf(step, index, piece.lies);
  const [rest, turned] = [half(piece, sides, -1, line, crease), half(piece, sides, 1, line, crease)];
  return [
    { corners: rest.corners, creases: rest.creases, lies: piece.lies, panel, movedAt },
    { corners: turned.corners, creases: turned.creases, lies, panel, movedAt: index },
  ];
}

/** The part of a piece on one side of a line, with the line as a new edge. */
function half(
  piece: Piece,
  sides: readonly number[],
  keep: number,
  line: Line,
  crease: Crease,
): Pick<Piece, 'corners' | 'creases'> {
  const corners: Point[] = [];
  const creases: Crease[] = [];
  const count = piece.corners.length;
  for (let index = 0; index < count; index++) {
    const next = (index + 1) % count;
    const [here, there] = [piece.corners[index], piece.corners[next]];
    const [side, nextSide] = [sides[index] ?? 0, sides[next] ?? 0];
    const own = piece.creases[index];
    if (!here || !there || !own) throw new Error('a piece has fewer edges than corners');
    if (side !== -keep) {
      corners.push(here);
      creases.push(side === 0 && nextSide === -keep ? crease : own);
    }
    if (side * nextSide === -1) {
      corners.push(crossing(line, here, there));
      creases.push(side === keep ? crease : own);
    }
  }
  return { corners, creases };
}

/** Where a line crosses the segment between two corners; the same point whichever corner comes first. */
function crossing(line: Line, p: Point, q: Point): Point {
  const [first, last] = p.x < q.x || (p.x === q.x && p.y < q.y) ? [p, q] : [q, p];
  const a = distanceFrom(line, first);
  const b = distanceFrom(line, last);
  const share = a / (a - b);
  return rounded({ x: first.x + share * (last.x - first.x), y: first.y + share * (last.y - first.y) });
}
