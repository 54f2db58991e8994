import {
  areaPaths,
  EndType,
  inflatePaths,
  JoinType,
  type Path64,
  type Paths64,
  ramerDouglasPeucker,
} from 'clipper2-ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Turn } from './nesting.ts';

interface Corner {
  readonly x: Nm;
  readonly y: Nm;
}

/** Outlines are compared in steps of so many nanometres: 10 µm. */
export const STEP = 10_000;

/** Steps by which every outline is grown beyond half the gap, so that no rounding brings two pieces too near. */
const SAFETY = 2;

/** An outline with more corners than this is made simpler, and grown by what that may cut off. */
const mostCorners = 40;

/** A rectangle's corners, clockwise as seen. */
export const rectangleOutline = (width: Nm, height: Nm): readonly Corner[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/**
 * An outline turned clockwise as seen together with its box, which again has its top left corner at the origin.
 * @param width of the box before it is turned
 */
export function turnedOutline(
  outline: readonly Corner[],
  width: Nm,
  height: Nm,
  turn: Turn,
): readonly Corner[] {
  const turned: Readonly<Record<Turn, (corner: Corner) => Corner>> = {
    0: (corner) => corner,
    90: ({ x, y }) => ({ x: height - y, y: x }),
    180: ({ x, y }) => ({ x: width - x, y: height - y }),
    270: ({ x, y }) => ({ x: y, y: width - x }),
  };
  return outline.map(turned[turn]);
}

/** Area in nm², of an outline that does not cross itself. */
export function outlineArea(outline: readonly Corner[]): number {
  let twice = 0;
  outline.forEach((corner, index) => {
    const next = outline[(index + 1) % outline.length] as Corner;
    twice += corner.x * next.y - corner.y * next.x;
  });
  return Math.abs(twice) / 2;
}

/** Area of a piece, nm²: within its outline where it has one. */
export const pieceArea = ({
  outline,
  width,
  height,
}: {
  readonly outline?: readonly Corner[] | undefined;
  readonly width: Nm;
  readonly height: Nm;
}): number => (outline === undefined ? width * height : outlineArea(outline));

/** What is kept free around an outline. */
export interface Keep {
  /** Half of it is kept on either side. */
  readonly gap: Nm;
  /** Rather too small an outline than too large a one: to prove that two do not lie side by side. */
  readonly within?: boolean;
}

/** What must not overlap another piece's, in steps: the outline grown by half the gap and what rounding may take. */
export function keepOut(outline: readonly Corner[], { gap, within = false }: Keep): Path64 {
  const exact: Path64 = outline.map(({ x, y }) => ({ x: Math.round(x / STEP), y: Math.round(y / STEP) }));
  let [path, error] = [exact, 0];
  for (let tolerance = 1; path.length > mostCorners && tolerance < 500; tolerance *= 2) {
    path = ramerDouglasPeucker(exact, tolerance);
    error = tolerance;
  }
  const slip = (SAFETY + error) * (within ? -1 : 1);
  return outermost(inflatePaths([path], gap / 2 / STEP + slip, JoinType.Miter, EndType.Polygon));
}

/** Of several paths the one around the most. */
function outermost(paths: Paths64): Path64 {
  let best: Path64 = [];
  let most = -1;
  for (const path of paths) {
    const area = Math.abs(areaPaths([path]));
    if (area > most) [best, most] = [path, area];
  }
  return best;
}
