import type { Spot } from './box.ts';
import type { GuillotineTable } from './guillotine-table.ts';
import { indexUpTo } from './reachable.ts';

/** Where the four lines of a pinwheel may lie: so many of each, spread evenly where there are more. */
const mostLines = 48;

/** Of two pairs of lines: the first block ends at `x1`, the last begins at `x2`, likewise for y. */
interface Lines {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

interface Block {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Five blocks around a middle one, no straight cut through all of them; mirrored it is worth the same. */
const blocksOf = ({ x1, x2, y1, y2 }: Lines, width: number, height: number): readonly Block[] => [
  { x: 0, y: 0, width: x1, height: y2 },
  { x: x1, y: 0, width: width - x1, height: y1 },
  { x: x1, y: y1, width: x2 - x1, height: y2 - y1 },
  { x: x2, y: y1, width: width - x2, height: height - y1 },
  { x: 0, y: y2, width: x2, height: height - y2 },
];

/**
 * The most valuable layout of five blocks that lie like a pinwheel, each cut straight: the simplest that no straight cuts
 * from edge to edge can yield.
 * Source: Arenales & Morabito, "An AND/OR-graph approach to the solution of two-dimensional non-guillotine cutting
 * problems", Eur. J. Oper. Res. 84 (1995) 599-617 (from memory).
 */
export function pinwheel(table: GuillotineTable, width: number, height: number): readonly Spot[] {
  const starts = thinned(table.columns.filter((x) => x > 0 && x < width));
  const ends = starts.map((x) => width - x);
  const tops = thinned(table.rows.filter((y) => y > 0 && y < height));
  const feet = tops.map((y) => height - y);
  let [best, most]: [Lines | undefined, number] = [undefined, 0];
  // each pair of lines is looked up once, not again for every other pair
  const between = tops.map((y1) => feet.map((y2) => (y2 > y1 ? indexUpTo(table.rows, y2 - y1) : 0)));
  for (const x1 of starts)
    for (const x2 of ends) {
      if (x2 <= x1) continue;
      const column = indexUpTo(table.columns, x2 - x1);
      const top = tops.map((y1) => table.worth(width - x1, y1) + table.worth(width - x2, height - y1));
      const foot = feet.map((y2) => table.worth(x1, y2) + table.worth(x2, height - y2));
      for (let i = 0; i < tops.length; i++) {
        const rows = between[i] as readonly number[];
        for (let j = 0; j < feet.length; j++) {
          const row = rows[j] as number;
          if (row === 0) continue;
          const value = (top[i] as number) + (foot[j] as number) + table.worthAt(column, row);
          if (value <= most) continue;
          [best, most] = [{ x1, x2, y1: tops[i] as number, y2: feet[j] as number }, value];
        }
      }
    }
  if (best === undefined) return [];
  return blocksOf(best, width, height).flatMap((block) =>
    table
      .layoutOf(block.width, block.height)
      .map((spot) => ({ ...spot, x: spot.x + block.x, y: spot.y + block.y })),
  );
}

function thinned(lengths: readonly number[]): readonly number[] {
  if (lengths.length <= mostLines) return lengths;
  const step = lengths.length / mostLines;
  return Array.from({ length: mostLines }, (_, index) => lengths[Math.floor(index * step)] as number);
}
