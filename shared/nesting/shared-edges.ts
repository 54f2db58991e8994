import type { Nm } from '../lengths/nanometres.ts';
import type { Rectangle } from './free-space.ts';
import type { NestInput } from './nest-spec.ts';
import type { Placed, SharedEdge } from './nesting.ts';
import { turnedOutline } from './outline.ts';

interface Side {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** What lies on a sheet: a rectangle, or an outline that touches its sides. */
export interface Lain extends Rectangle {
  /** Corners as it lies, from the rectangle's top left corner; absent where all of the rectangle is the piece. */
  readonly outline?: readonly { readonly x: Nm; readonly y: Nm }[];
}

/** Corners so near to a side lie on it: whole nanometres of a box are rounded up. */
const slip = 2;

/**
 * Stretches where a side of one piece lies on the opposite side of another; those in line that touch are one. Lines of
 * outlines count as far as they lie on the sides of their boxes: outlines within one another's boxes lie apart.
 */
export function sharedEdges(pieces: readonly Lain[]): readonly SharedEdge[] {
  const upright = meeting(
    pieces.flatMap((piece) => uprightSides(piece, piece.width)),
    pieces.flatMap((piece) => uprightSides(piece, 0)),
  );
  const level = meeting(
    pieces.map(mirrored).flatMap((piece) => uprightSides(piece, piece.width)),
    pieces.map(mirrored).flatMap((piece) => uprightSides(piece, 0)),
  );
  return [
    ...upright.map(({ at, from, to }) => ({ x1: at, y1: from, x2: at, y2: to })),
    ...level.map(({ at, from, to }) => ({ x1: from, y1: at, x2: to, y2: at })),
  ];
}

/** Of pieces where they lie. */
export const edgesShared = (
  placed: readonly Placed[],
  pieces: readonly Pick<NestInput['pieces'][number], 'width' | 'height' | 'outline'>[],
): readonly SharedEdge[] =>
  sharedEdges(
    placed.map(({ piece, x, y, width, height, turn }) => {
      const { outline, ...own } = pieces[piece] ?? { width, height };
      return {
        x,
        y,
        width,
        height,
        ...(outline ? { outline: turnedOutline(outline, own.width, own.height, turn) } : {}),
      };
    }),
  );

/** Across and along exchanged. */
const mirrored = ({ x, y, width, height, outline }: Lain): Lain => ({
  x: y,
  y: x,
  width: height,
  height: width,
  ...(outline ? { outline: outline.map((corner) => ({ x: corner.y, y: corner.x })) } : {}),
});

/** Where a piece lies on an upright line, so far from its left. */
function uprightSides({ x, y, height, outline }: Lain, across: Nm): readonly Side[] {
  if (outline === undefined) return [{ at: x + across, from: y, to: y + height }];
  return outline.flatMap((corner, index) => {
    const next = outline[(index + 1) % outline.length] ?? corner;
    if ([corner, next].some((each) => Math.abs(each.x - across) > slip)) return [];
    return [{ at: x + across, from: y + Math.min(corner.y, next.y), to: y + Math.max(corner.y, next.y) }];
  });
}

function meeting(ends: readonly Side[], starts: readonly Side[]): readonly Side[] {
  const byPlace = Map.groupBy(starts, ({ at }) => at);
  const stretches = ends.flatMap((end) =>
    (byPlace.get(end.at) ?? []).flatMap((start) => {
      const [from, to] = [Math.max(end.from, start.from), Math.min(end.to, start.to)];
      return from < to ? [{ at: end.at, from, to }] : [];
    }),
  );
  const joined: Side[] = [];
  for (const side of stretches.sort((one, other) => one.at - other.at || one.from - other.from)) {
    const last = joined.at(-1);
    if (last !== undefined && last.at === side.at && side.from <= last.to)
      joined[joined.length - 1] = { ...last, to: Math.max(last.to, side.to) };
    else joined.push(side);
  }
  return joined;
}
