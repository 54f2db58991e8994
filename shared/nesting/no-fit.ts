import {
  areaPaths,
  difference,
  FillRule,
  intersect,
  isPositive,
  type Path64,
  type Paths64,
  translatePath,
  union,
} from 'clipper2-ts';

/** A position of a piece's top left corner, in steps. */
export interface Position {
  readonly x: number;
  readonly y: number;
}

/**
 * Where the corner of a piece may not lie if the other lies at the origin: the no-fit polygon, with its holes filled,
 * so that no piece is put into a closed hollow of another.
 * Source: Bennell & Oliveira, "The geometry of nesting problems: a tutorial", Eur. J. Oper. Res. 184 (2008) 397-415
 * (from memory).
 */
export const noFit = (other: Path64, piece: Path64): Paths64 =>
  // a band, whose outer rim encloses every position with overlap
  swept(other, piece).filter((path) => isPositive(path));

/** The same without its hollows: where one piece may lie in a closed hollow of the other. */
export const noFitWithHollows = (other: Path64, piece: Path64): Paths64 =>
  swept(other, piece).filter((path) => isPositive(path) || isHollow(path, other, piece));

/** All that one outline's edges sweep along the other's, edge by edge: far quicker than all at once, which cross so often. */
function swept(other: Path64, piece: Path64): Paths64 {
  let parts = other.map((from, index) => {
    const to = other[(index + 1) % other.length] as Position;
    return union(
      piece.map((start, at) => {
        const end = piece[(at + 1) % piece.length] as Position;
        const quad = [minus(from, start), minus(to, start), minus(to, end), minus(from, end)];
        return isPositive(quad) ? quad : quad.toReversed();
      }),
      FillRule.NonZero,
    );
  });
  while (parts.length > 1)
    parts = parts.flatMap((part, index) =>
      index % 2 === 1 ? [] : [union([...part, ...(parts[index + 1] ?? [])], FillRule.NonZero)],
    );
  return parts[0] ?? [];
}

const minus = (one: Position, other: Position): Position => ({ x: one.x - other.x, y: one.y - other.y });

/** On a hole's rim outlines touch: then one lies wholly within the other, or all but none of it. */
function isHollow([at]: Path64, other: Path64, piece: Path64): boolean {
  if (at === undefined) return false;
  const area = (paths: Paths64) => Math.abs(areaPaths(paths));
  const overlap = area(intersect([other], [translatePath(piece, at.x, at.y)], FillRule.NonZero));
  return overlap < Math.min(area([other]), area([piece])) / 2;
}

/** A no-fit polygon where the other piece lies elsewhere. */
export const movedTo = (paths: Paths64, { x, y }: Position): Paths64 =>
  paths.map((path) => translatePath(path, x, y));

/** Where the corner of a piece may lie on a sheet with nothing on it. */
export interface Range {
  /** The largest x; 0 where the piece is as wide as the sheet. */
  readonly across: number;
  readonly along: number;
}

/** All positions of a range; none where the piece is larger than the sheet. */
export function allPositions({ across, along }: Range): Paths64 {
  if (across < 0 || along < 0) return [];
  // at least a step wide, since an area is needed to cut from; what lies beyond is put back, within the safety
  const [right, bottom] = [Math.max(1, across), Math.max(1, along)];
  return [
    [
      { x: 0, y: 0 },
      { x: right, y: 0 },
      { x: right, y: bottom },
      { x: 0, y: bottom },
    ],
  ];
}

/** Positions that are left without those that a no-fit polygon holds within. */
export const withoutPositions = (free: Paths64, forbidden: Paths64): Paths64 =>
  free.length === 0 ? free : difference(free, forbidden, FillRule.NonZero);

/** Corners of a region of positions, within its range. */
export const cornersOf = (free: Paths64, { across, along }: Range): readonly Position[] =>
  free.flat().map(({ x, y }) => ({ x: Math.min(x, across), y: Math.min(y, along) }));

/** Whether a rectangle of positions is not all forbidden; positions on its edge count. */
export function isFree(
  { left, top, right, bottom }: { left: number; top: number; right: number; bottom: number },
  forbidden: Paths64,
): boolean {
  // a step larger all around: an area is needed to cut from
  const whole: Path64 = [
    { x: left - 1, y: top - 1 },
    { x: right + 1, y: top - 1 },
    { x: right + 1, y: bottom + 1 },
    { x: left - 1, y: bottom + 1 },
  ];
  return difference([whole], forbidden, FillRule.NonZero).length > 0;
}
