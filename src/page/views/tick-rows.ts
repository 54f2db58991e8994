/** A label along a ruler, in pixels. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface PlacedTick extends Tick {
  /** 0 is nearest to the ruler. */
  readonly row: number;
}

const gap = 6;

/** From a ruler to the numbers at its left, in pixels. */
export const tickReach = 12;

/** The least room beside a picture, in pixels. */
const least = { left: 54, right: 16 };

/**
 * The room that the numbers along the upper and the left edge of a picture need at its sides, in pixels: those at the
 * left stand there in full, and of those above the outermost reach half of their width beyond the edge.
 */
export function sideRooms(
  { across, down }: { readonly across: readonly string[]; readonly down: readonly string[] },
  widthOf: (text: string) => number,
): { readonly left: number; readonly right: number } {
  const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map(widthOf));
  return {
    left: Math.max(least.left, tickReach + widest(down) + gap, widest(across) / 2 + 2),
    right: Math.max(least.right, widest(across) / 2 + 2),
  };
}

/** Puts labels that would run into each other into rows; what fits no row is left out. */
export function tickRows(
  ticks: readonly Tick[],
  widthOf: (text: string) => number,
  rows: number,
): PlacedTick[] {
  const ends: number[] = Array.from({ length: rows }, () => -Infinity);
  return ticks.flatMap((tick) => {
    const half = widthOf(tick.text) / 2;
    const row = ends.findIndex((end) => tick.at - half >= end + gap);
    if (row < 0) return [];
    ends[row] = tick.at + half;
    return [{ ...tick, row }];
  });
}

/** Where the name of the unit ends: at the ruler's corner, or before a first number that reaches out over it. */
export const unitEnd = (placed: readonly PlacedTick[], widthOf: (text: string) => number): number =>
  Math.min(
    -tickReach,
    ...placed.filter(({ row }) => row === 0).map(({ at, text }) => at - widthOf(text) / 2 - gap),
  );
