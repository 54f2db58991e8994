import { type Box, posesWithin } from './box.ts';

export interface Reachable {
  /** Ascending, from 0, at most `limit`. */
  readonly lengths: readonly number[];
  /** False when there were too many to list: then some are missing. */
  readonly complete: boolean;
}

/**
 * The sums of sides that fit one after another within `limit`: where an edge can lie once every box is pushed as far as
 * it goes towards the origin ("normal patterns": Herz, IBM J. Res. Dev. 16 (1972) 462-469, from memory).
 * @param counted false lets every box come as often as it fits
 */
export function reachable(
  boxes: readonly Box[],
  side: 'width' | 'height',
  room: { readonly width: number; readonly height: number },
  counted: boolean,
  most = 5000,
): Reachable {
  const limit = room[side];
  const reached = new Set([0]);
  for (const box of boxes) {
    const sides = posesWithin(box, room.width, room.height).map((pose) => pose[side]);
    const shortest = Math.min(...sides);
    const times = Math.min(counted ? box.count : Number.POSITIVE_INFINITY, Math.floor(limit / shortest));
    let last = [...reached];
    for (let time = 0; time < times && last.length > 0; time++) {
      const added: number[] = [];
      for (const length of last)
        for (const side of sides) {
          const sum = length + side;
          if (sum > limit || reached.has(sum)) continue;
          reached.add(sum);
          added.push(sum);
          if (reached.size >= most) return { lengths: ascending(reached), complete: false };
        }
      last = added;
    }
  }
  return { lengths: ascending(reached), complete: true };
}

const ascending = (lengths: ReadonlySet<number>): readonly number[] =>
  [...lengths].sort((one, other) => one - other);

/** The largest listed length up to `limit`, by its index; -1 for none. */
export function indexUpTo(lengths: readonly number[], limit: number): number {
  let [low, high] = [0, lengths.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lengths[middle] ?? 0) <= limit) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
