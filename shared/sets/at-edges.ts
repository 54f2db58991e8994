import type { Nm } from '../lengths/nanometres.ts';
import type { Placed } from '../nesting/nesting.ts';
import type { SheetArea } from './sheet-areas.ts';

/** So near to an edge, nm, a line is taken for the edge when the sheet is drawn. */
const near = 2000;

/**
 * Pieces that reach an edge of their sheet, moved out until their room for the kerf lies beyond it altogether: the edge then
 * serves as their side, which is where the piece ends. Moved less far they would come out too large.
 */
export function atEdges(placed: readonly Placed[], { width, height, beyond }: SheetArea): readonly Placed[] {
  return placed.map((each) => {
    const x = outward(each.x, each.width, width, beyond);
    const y = outward(each.y, each.height, height, beyond);
    return x === each.x && y === each.y ? each : { ...each, x, y };
  });
}

/** By how much a piece comes out larger than it is, since both edges serve and lie further apart than its sides. */
export function tooLargeBy(each: Placed, { left, top, width, height, beyond }: SheetArea): Nm {
  if (Math.min(left, top) >= 0) return 0;
  const excess = (from: number, length: number, side: number) =>
    from <= near && from + length >= side - near ? side + 2 * beyond - length : 0;
  const most = Math.max(excess(each.x, each.width, width), excess(each.y, each.height, height));
  return most > near ? most : 0;
}

function outward(from: number, length: number, side: number, beyond: number): number {
  const [first, last] = [from <= near, from + length >= side - near];
  // one that reaches both edges has no room to move
  if (first === last) return from;
  return first ? Math.min(from, -beyond) : Math.max(from, side + beyond - length);
}
