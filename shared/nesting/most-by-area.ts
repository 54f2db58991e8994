import type { ValuedBox } from './best-value.ts';
import { areaOf } from './box.ts';

/** Tables longer than this are not made: the bound is then looked up between boxes, which bounds as well but less closely. */
const longestTable = 50_000;

/** The most value that counted boxes of so much area altogether can have: a knapsack, exact for small whole areas. */
export function mostByArea(boxes: readonly ValuedBox[], capacity: number): (area: number) => number {
  return Number.isInteger(capacity) && capacity <= longestTable ? exactly(boxes, capacity) : inShares(boxes);
}

function exactly(boxes: readonly ValuedBox[], capacity: number): (area: number) => number {
  const most = new Float64Array(capacity + 1);
  for (const box of boxes) {
    const area = areaOf(box);
    const copies = Math.min(box.count, Math.floor(capacity / area));
    // counts as 1, 2, 4 … and a rest, which make every number up to `copies`
    for (let rest = copies, part = 1; rest > 0; rest -= part, part = Math.min(2 * part, rest)) {
      const [size, value] = [part * area, part * box.value];
      for (let at = capacity; at >= size; at--)
        most[at] = Math.max(most[at] as number, (most[at - size] as number) + value);
      if (rest - part <= 0) break;
    }
  }
  return (area) => (area < 0 ? 0 : (most[Math.min(capacity, Math.floor(area))] as number));
}

function inShares(boxes: readonly ValuedBox[]): (area: number) => number {
  const sorted = boxes.toSorted((one, other) => other.value / areaOf(other) - one.value / areaOf(one));
  return (area) => {
    let [left, value] = [area, 0];
    for (const box of sorted) {
      if (left <= 0) break;
      const copies = Math.min(box.count, left / areaOf(box));
      value += copies * box.value;
      left -= copies * areaOf(box);
    }
    return value;
  };
}
