import { type AliveList, aliveList } from './alive-list.ts';
import { type Box, type Pose, poses, type Spot } from './box.ts';
import { type Rectangle, without } from './free-space.ts';

/** Where a box goes among the free spaces: the least score, then the least second score. */
export type Rule = (space: Rectangle, pose: Pose) => readonly [number, number];

export const rules = {
  /** Where the shorter rest is shortest. */
  shortSide: ({ width, height }, pose) => {
    const [across, along] = [width - pose.width, height - pose.height];
    return across < along ? [across, along] : [along, across];
  },
  /** In the smallest space. */
  area: ({ width, height }, pose) => [width * height, Math.min(width - pose.width, height - pose.height)],
  /** As near to the first edge as it goes. */
  low: ({ x, y }, pose) => [y + pose.height, x],
} satisfies Readonly<Record<string, Rule>>;

/** Into closed spaces before the open end of a strip, where the rest across is least. */
export const closedFirst: Rule = ({ width, height, y }, pose) => [
  Number.isFinite(height) ? width - pose.width : Number.MAX_VALUE,
  y + pose.height,
];

/** What boxes are sorted by, the largest first. `of` also says how large a free space is by that measure. */
export interface SizeKey {
  readonly of: (sides: { readonly width: number; readonly height: number }) => number;
}

export const sizeKeys = {
  area: { of: ({ width, height }) => width * height },
  longest: { of: ({ width, height }) => Math.max(width, height) },
  shortest: { of: ({ width, height }) => Math.min(width, height) },
  tall: { of: ({ height }) => height },
  wide: { of: ({ width }) => width },
  around: { of: ({ width, height }) => width + height },
} satisfies Readonly<Record<string, SizeKey>>;

/** Boxes in an order, of which copies are taken sheet by sheet. */
export interface Queue {
  readonly boxes: readonly Box[];
  readonly counts: number[];
  readonly order: readonly number[];
  readonly sizes: readonly number[];
  readonly key: SizeKey;
  readonly alive: AliveList;
  readonly poses: readonly (readonly Pose[])[];
  /** No pose of any box is narrower, or lower. */
  readonly narrowest: number;
  readonly lowest: number;
}

/**
 * @param counts copies left by number of the box; filling changes it, and a box that has none left may get none back
 * @param stir factor on each size by which the order is changed; default none
 * @param posesOf how each box may lie; default every way that it can
 */
export function queueOf(
  boxes: readonly Box[],
  counts: number[],
  key: SizeKey,
  stir: () => number = () => 1,
  posesOf: (box: Box) => readonly Pose[] = poses,
): Queue {
  const size = boxes.map((box) => key.of(box) * stir());
  const order = boxes
    .map((_, index) => index)
    .filter((index) => (counts[index] ?? 0) > 0)
    .sort((one, other) => (size[other] ?? 0) - (size[one] ?? 0) || one - other);
  const lying = boxes.map(posesOf);
  const least = (side: 'width' | 'height') =>
    order.reduce(
      (most, box) => Math.min(most, ...(lying[box] ?? []).map((pose) => pose[side])),
      Number.POSITIVE_INFINITY,
    );
  return {
    boxes,
    counts,
    order,
    sizes: order.map((index) => size[index] ?? 0),
    key,
    alive: aliveList(order.length, (at) => (counts[order[at] as number] ?? 0) > 0),
    poses: lying,
    narrowest: least('width'),
    lowest: least('height'),
  };
}

/** After so many boxes in a row that do not fit, those too large for every free space are skipped. */
const patience = 24;

/**
 * Fills one sheet: takes boxes in order, each as often as it fits, and puts each where the rule says. Its cost does not
 * grow with the number of boxes that wait beyond their logarithm.
 * @param may whether a box may lie on this sheet
 */
export function fillByOrder(
  queue: Queue,
  width: number,
  height: number,
  rule: Rule,
  may: (box: number) => boolean = () => true,
): Spot[] {
  const { order, sizes, counts, alive, key, narrowest, lowest } = queue;
  const useful = (space: Rectangle) => space.width >= narrowest && space.height >= lowest;
  let free: readonly Rectangle[] = [{ x: 0, y: 0, width, height }].filter(useful);
  let widest = width;
  let highest = height;
  const spots: Spot[] = [];
  let misses = 0;
  let shrink = 1;
  for (let at = alive.from(0); at < order.length && free.length > 0; at = alive.from(at + 1)) {
    const box = order[at] as number;
    let placed = false;
    const lying = queue.poses[box] ?? [];
    while (may(box) && (counts[box] ?? 0) > 0) {
      if (!lying.some((pose) => pose.width <= widest && pose.height <= highest)) break;
      const best = bestSpace(free, lying, rule);
      if (best === undefined) break;
      const spot = { box, x: best.space.x, y: best.space.y, ...best.pose };
      spots.push(spot);
      counts[box] = (counts[box] ?? 0) - 1;
      free = without(free, spot).filter(useful);
      widest = free.reduce((most, space) => Math.max(most, space.width), 0);
      highest = free.reduce((most, space) => Math.max(most, space.height), 0);
      placed = true;
    }
    if (placed) [misses, shrink] = [0, 1];
    else if (++misses >= patience) {
      const largest = free.reduce((most, space) => Math.max(most, key.of(space)), 0);
      // the smallest are always tried
      const next = Math.min(firstUpTo(sizes, largest * shrink), order.length - patience);
      at = Math.max(at, next - 1);
      [misses, shrink] = [0, shrink / 2];
    }
  }
  return spots;
}

function bestSpace(free: readonly Rectangle[], lying: readonly Pose[], rule: Rule) {
  let best: { readonly space: Rectangle; readonly pose: Pose } | undefined;
  let [least, second] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const pose of lying)
    for (const space of free) {
      if (pose.width > space.width || pose.height > space.height) continue;
      const [one, two] = rule(space, pose);
      if (one < least || (one === least && two < second)) {
        best = { space, pose };
        [least, second] = [one, two];
      }
    }
  return best;
}

/** Index of the first size in a descending list that is at most `limit`. */
function firstUpTo(sizes: readonly number[], limit: number): number {
  let [low, high] = [0, sizes.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sizes[middle] ?? 0) > limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
