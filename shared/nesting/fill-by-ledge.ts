import { aliveList } from './alive-list.ts';
import { type Box, type Pose, poses, type Spot } from './box.ts';
import { flat, type Ledge, lowest, raised } from './skyline.ts';

/** Boxes as they can lie, the widest first. */
export interface Shelf {
  readonly entries: readonly { readonly box: number; readonly pose: Pose }[];
}

/** @param posesOf how each box may lie; default every way that it can */
export const shelfOf = (boxes: readonly Box[], posesOf: (box: Box) => readonly Pose[] = poses): Shelf => ({
  entries: boxes
    .flatMap((box, index) => posesOf(box).map((pose) => ({ box: index, pose })))
    .sort(
      (one, other) =>
        other.pose.width - one.pose.width || other.pose.height - one.pose.height || one.box - other.box,
    ),
});

/** So many boxes that fit a ledge are compared, the widest first. */
const compared = 200;

/**
 * Fills one sheet, or a strip without end, from the bottom: the lowest ledge takes the box that fits it best, by its
 * width, then level with a wall beside it; between equals the ranks decide. A ledge that takes none is closed.
 * Best fit: Burke, Kendall & Whitwell, Oper. Res. 52 (2004) 655-671; scores: Leung, Zhang & Sim, Eur. J. Oper. Res.
 * 215 (2011) 57-69 (both from memory).
 * @param counts copies left by number of the box; taking changes it
 * @param ranks by number of the box: the lowest first
 * @param may whether a box may lie on this sheet
 */
export function fillByLedge(
  { entries }: Shelf,
  counts: number[],
  width: number,
  height: number,
  ranks: readonly number[],
  may: (box: number) => boolean = () => true,
): Spot[] {
  const spots: Spot[] = [];
  const left = (at: number) => {
    const { box } = entries[at] as Shelf['entries'][number];
    return (counts[box] ?? 0) > 0 && may(box);
  };
  const alive = aliveList(entries.length, left);
  let ledges = flat(width);
  while (alive.from(0) < entries.length) {
    const at = lowest(ledges);
    const { x, width: room, y } = ledges[at] as Ledge;
    if (y >= height) break;
    const [wallLeft, wallRight] = [ledges[at - 1]?.y, ledges[at + 1]?.y];
    let best: Shelf['entries'][number] | undefined;
    let [bestScore, bestRank] = [-1, 0];
    let seen = 0;
    for (
      let index = alive.from(firstWithin(entries, room));
      index < entries.length && seen < compared;
      index = alive.from(index + 1)
    ) {
      const entry = entries[index] as Shelf['entries'][number];
      if (y + entry.pose.height > height) continue;
      seen++;
      const top = y + entry.pose.height;
      const level = top === wallLeft || top === wallRight || top === height ? 1 : 0;
      const score = (entry.pose.width === room ? 2 : 0) + level;
      const rank = ranks[entry.box] ?? 0;
      if (score > bestScore || (score === bestScore && rank < bestRank)) {
        best = entry;
        [bestScore, bestRank] = [score, rank];
      }
    }
    if (best === undefined) {
      ledges = raised(ledges, x, room, Math.min(wallLeft ?? height, wallRight ?? height));
      continue;
    }
    const { pose, box } = best;
    const besideRight = (wallRight ?? height) > (wallLeft ?? height) && pose.width < room;
    const from = besideRight ? x + room - pose.width : x;
    spots.push({ box, x: from, y, ...pose });
    counts[box] = (counts[box] ?? 0) - 1;
    ledges = raised(ledges, from, pose.width, y + pose.height);
  }
  return spots;
}

/** Index of the first entry that is no wider than `room`. */
function firstWithin(entries: Shelf['entries'], room: number): number {
  let [low, high] = [0, entries.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((entries[middle]?.pose.width ?? 0) > room) low = middle + 1;
    else high = middle;
  }
  return low;
}
