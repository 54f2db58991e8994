import {
  compose,
  distanceFrom,
  type Isometry,
  identity,
  inverse,
  type Line,
  move,
  type Point,
  reflection,
  rounded,
  turnsOver,
} from '../geometry/plane.ts';
import type { CreasePattern, Edge, Letter } from './crease-pattern.ts';
import { edgeKey } from './edge-key.ts';
import type { FoldProgram, FoldStep, Panel } from './fold-program.ts';

/** What an edge of a piece is: border, or the crease that a fold left. */
interface Crease {
  readonly letter: Letter;
  readonly foldAngle: number;
  readonly step?: number;
}

const border: Crease = Object.freeze({ letter: 'B', foldAngle: 0 });

/** A piece of the sheet that lies flat: corner i and the edge from it to the next, and where it lies now. */
interface Piece {
  readonly corners: readonly Point[];
  readonly creases: readonly Crease[];
  readonly lies: Isometry;
}

/** Nearer to a fold line than this, in nanometres, is on it. */
const ON_LINE = 0.5;

/**
 * Folds the blank in the order of its program and opens it again: what is left on the sheet is the crease
 * pattern. A fold goes through every layer that it meets, so a layer which lies turned over by then gets the
 * opposite letter.
 * @throws Error when the program leaves a crease that ends inside the sheet: no paper folds so
 */
export function unfold(program: FoldProgram): CreasePattern {
  let pieces: Piece[] = [
    { corners: program.outline, creases: program.outline.map(() => border), lies: identity },
  ];
  for (const [index, step] of program.steps.entries()) {
    if (step.kind === 'fold') pieces = pieces.flatMap((piece) => foldPiece(piece, step, index));
  }
  return gather(pieces, program);
}

function foldPiece(piece: Piece, step: FoldStep, index: number): Piece[] {
  const back = inverse(piece.lies);
  const line: Line = { from: move(back, step.line.from), to: move(back, step.line.to) };
  const sign = Math.sign(distanceFrom(line, move(back, step.moving)));
  const sides = piece.corners.map((corner) => {
    const distance = sign * distanceFrom(line, corner);
    return Math.abs(distance) < ON_LINE ? 0 : Math.sign(distance);
  });
  if (!sides.includes(1)) return [piece];
  const moved = step.angle === 180 ? compose(reflection(step.line), piece.lies) : piece.lies;
  if (!sides.includes(-1)) return [{ ...piece, lies: moved }];
  const toward = (step.direction === 'toward') !== turnsOver(piece.lies);
  const crease: Crease = {
    letter: toward ? 'V' : 'M',
    foldAngle: toward ? step.angle : -step.angle,
    step: index,
  };
  return [
    { ...half(piece, sides, -1, line, crease), lies: piece.lies },
    { ...half(piece, sides, 1, line, crease), lies: moved },
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

function gather(pieces: readonly Piece[], program: FoldProgram): CreasePattern {
  const { vertices, indexOf } = vertexList();
  const edges: { edge: Edge; uses: number }[] = [];
  const edgeAt = new Map<number, { edge: Edge; uses: number }>();
  const faces = pieces.map((piece) => {
    const corners = piece.corners.map(indexOf);
    for (const [at, from] of corners.entries()) {
      const to = corners[(at + 1) % corners.length] ?? from;
      const ends: [number, number] = from < to ? [from, to] : [to, from];
      const key = edgeKey(from, to);
      const known = edgeAt.get(key);
      if (known) known.uses++;
      else {
        const { letter, foldAngle, step } = piece.creases[at] ?? border;
        const edge = step === undefined ? { ends, letter, foldAngle } : { ends, letter, foldAngle, step };
        const entry = { edge, uses: 1 };
        edges.push(entry);
        edgeAt.set(key, entry);
      }
    }
    return { vertices: corners, panel: panelOf(piece, program.panels) };
  });
  for (const { edge, uses } of edges) {
    if (uses !== (edge.letter === 'B' ? 1 : 2))
      throw new Error(`the fold program leaves a loose end at vertices ${edge.ends.join(' and ')}`);
  }
  return {
    vertices,
    edges: edges.map(({ edge }) => edge),
    faces,
    steps: program.steps.map((step) => step.name),
  };
}

/** A list of different points, and a function that finds a point's place in it or adds it. */
function vertexList() {
  const vertices: Point[] = [];
  const columns = new Map<number, Map<number, number>>();
  const indexOf = (point: Point): number => {
    const column = columns.get(point.x) ?? new Map<number, number>();
    columns.set(point.x, column);
    const known = column.get(point.y);
    if (known !== undefined) return known;
    column.set(point.y, vertices.length);
    return vertices.push(point) - 1;
  };
  return { vertices, indexOf };
}

function panelOf(piece: Piece, panels: readonly Panel[]): string {
  let [x, y] = [0, 0];
  for (const corner of piece.corners) {
    x += corner.x / piece.corners.length;
    y += corner.y / piece.corners.length;
  }
  const found = panels.find(
    (panel) => x > panel.left && x < panel.right && y > panel.top && y < panel.bottom,
  );
  if (!found) throw new Error(`no panel holds the point ${x}, ${y}`);
  return found.name;
}
