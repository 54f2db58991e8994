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
