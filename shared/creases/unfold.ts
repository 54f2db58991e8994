import { identity, type Point } from '../geometry/plane.ts';
import type { CreasePattern, Edge } from './crease-pattern.ts';
import { edgeKey } from './edge-key.ts';
import type { FoldProgram, Panel } from './fold-program.ts';
import { creasedWhereParted, isInPieces, joinedPieces } from './joined-pieces.ts';
import { border, type Crease, foldPiece, type Piece } from './piece.ts';

/**
 * Folds the blank in the order of its program and opens it again: what is left on the sheet is the crease
 * pattern. A fold goes through every layer that it meets, so a layer which lies turned over by then gets the
 * opposite letter.
 * @throws Error when the program leaves a crease that ends inside the sheet, or tears it: no paper folds so
 */
export function unfold(program: FoldProgram): CreasePattern {
  const { outline, panels } = program;
  const inPieces = isInPieces(panels);
  let pieces: Piece[] = inPieces
    ? joinedPieces(panels)
    : [
        {
          corners: outline,
          creases: outline.map(() => border),
          lies: identity,
          panel: undefined,
          movedAt: -1,
        },
      ];
  for (const [index, step] of program.steps.entries()) {
    if (step.kind !== 'fold') continue;
    pieces = pieces.flatMap((piece) => foldPiece(piece, step, index));
    if (inPieces) pieces = creasedWhereParted(pieces, step, index);
  }
  return gather(pieces, program);
}

function gather(pieces: readonly Piece[], program: FoldProgram): CreasePattern {
  const { vertices, indexOf } = vertexList();
  const edges: { edge: Edge; uses: number }[] = [];
  const edgeAt = new Map<number, { edge: Edge; uses: number }>();
  const closed = closedAngles(program);
  const faces = pieces.map((piece) => {
    const corners = piece.corners.map(indexOf);
    for (const [at, from] of corners.entries()) {
      const to = corners[(at + 1) % corners.length] ?? from;
      const ends: [number, number] = from < to ? [from, to] : [to, from];
      const key = edgeKey(from, to);
      const known = edgeAt.get(key);
      if (known) known.uses++;
      else {
        const entry = { edge: edgeFrom(piece.creases[at] ?? border, ends, closed), uses: 1 };
        edges.push(entry);
        edgeAt.set(key, entry);
      }
    }
    return { vertices: corners, panel: piece.panel ?? panelOf(piece, program.panels) };
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

/** Folds that are bent otherwise in the finished form than when they are made: degrees by their index. */
function closedAngles({ steps }: FoldProgram): ReadonlyMap<number, number> {
  const stood = new Set(steps.flatMap((step) => (step.kind === 'stand' ? step.folds : [])));
  const found = new Map<number, number>();
  for (const [index, step] of steps.entries()) {
    if (step.kind !== 'fold') continue;
    const closed = stood.has(step.name) ? 90 : step.eased ? 0 : step.angle;
    if (closed !== step.angle) found.set(index, closed);
  }
  return found;
}

function edgeFrom(
  { letter, foldAngle, step }: Crease,
  ends: readonly [number, number],
  closed: ReadonlyMap<number, number>,
): Edge {
  if (step === undefined) return { ends, letter, foldAngle };
  const angle = closed.get(step);
  return angle === undefined
    ? { ends, letter, foldAngle, step }
    : { ends, letter, foldAngle, closedAngle: Math.sign(foldAngle) * angle, step };
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
