import { distanceFrom, identity, type Point } from '../geometry/plane.ts';
import type { FoldStep, Panel } from './fold-program.ts';
import { border, type Crease, creaseOf, flat, isOnLine, type Piece } from './piece.ts';

/** A corner may lie this many nanometres off the edge that it divides. */
const OFF_EDGE = 0.5;

/**
 * The sheet before the first fold, where it is made up of its panels' convex pieces: edges that two of them share are
 * flat until a fold parts them, all others are border. A corner in the middle of another piece's edge divides it.
 */
export function joinedPieces(panels: readonly Panel[]): Piece[] {
  const parts = panels.flatMap(({ name, pieces = [] }) =>
    pieces.map((corners) => ({ panel: name, corners })),
  );
  const every = parts.flatMap(({ corners }) => corners);
  const divided = parts.map(({ panel, corners }) => ({
    panel,
    corners: corners.flatMap((from, index) => {
      const to = corners[(index + 1) % corners.length] ?? from;
      return [from, ...between(from, to, every)];
    }),
  }));
  const uses = new Map<string, number>();
  for (const { corners } of divided) {
    for (const [key] of edgesOf(corners)) uses.set(key, (uses.get(key) ?? 0) + 1);
  }
  return divided.map(({ panel, corners }) => ({
    panel,
    corners,
    creases: edgesOf(corners).map(([key]): Crease => (uses.get(key) === 2 ? flat : border)),
    lies: identity,
    movedAt: -1,
  }));
}

/** Corners that lie within an edge, in order from its start, each once. */
function between(from: Point, to: Point, corners: readonly Point[]): Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const share = ({ x, y }: Point) =>
    ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / length ** 2;
  const found = new Map<string, Point>();
  for (const corner of corners) {
    const along = share(corner);
    if (along <= 0 || along >= 1 || nameOf(corner) === nameOf(from) || nameOf(corner) === nameOf(to))
      continue;
    if (Math.abs(distanceFrom({ from, to }, corner)) <= OFF_EDGE) found.set(nameOf(corner), corner);
  }
  return [...found.values()].toSorted((one, other) => share(one) - share(other));
}

/**
 * Turns the flat edges between pieces that a fold moved and others into its crease.
 * @throws Error where such an edge does not lie on the fold's line: the sheet would tear there
 */
export function creasedWhereParted(pieces: readonly Piece[], step: FoldStep, index: number): Piece[] {
  const sides = new Map<string, Piece[]>();
  for (const piece of pieces)
    for (const [key] of edgesOf(piece.corners)) sides.set(key, [...(sides.get(key) ?? []), piece]);
  return pieces.map((piece) => {
    const edges = edgesOf(piece.corners);
    const creases = piece.creases.map((crease, at) => {
      const [key, ends] = edges[at] ?? [];
      if (crease.letter !== 'F' || key === undefined || !ends) return crease;
      const [one, other] = sides.get(key) ?? [];
      if (!one || !other || (one.movedAt === index) === (other.movedAt === index)) return crease;
      const still = one.movedAt === index ? other : one;
      if (!ends.every((end) => isOnLine(step, still.lies, end)))
        throw new Error(`“${step.name}” would tear the sheet between ${one.panel} and ${other.panel}`);
      return creaseOf(step, index, still.lies);
    });
    return { ...piece, creases };
  });
}

const nameOf = ({ x, y }: Point): string => `${x},${y}`;

type Ends = readonly [Point, Point];

/** Each edge of a polygon with a key that is the same from either side. */
const edgesOf = (corners: readonly Point[]): readonly (readonly [string, Ends])[] =>
  corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const names = [nameOf(from), nameOf(to)].toSorted();
    return [names.join(' '), [from, to]];
  });

/** Whether a sheet is made up of pieces. */
export const isInPieces = (panels: readonly Panel[]): boolean =>
  panels.some(({ pieces }) => pieces !== undefined);
