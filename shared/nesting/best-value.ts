import type { Box, Spot } from './box.ts';
import { finished, type Trial } from './control.ts';
import { type FitOracle, fitOracle } from './fit-oracle.ts';
import { valueBound } from './value-bound.ts';

/** A box, and what one copy of it is worth. */
export interface ValuedBox extends Box {
  readonly value: number;
}

export interface ValuedLayout {
  readonly value: number;
  readonly spots: readonly Spot[];
  /** No layout is worth more than this. */
  readonly bound: number;
  /** Whether the layout is proved to be worth the most. */
  readonly proved: boolean;
  /** What the search cost. */
  readonly nodes: number;
}

export interface ValueLimits {
  /** Positions that may be looked at altogether. */
  readonly maxNodes: number;
  /** Positions for one choice of boxes, before it is left open whether they fit. */
  readonly nodesPerChoice: number;
  /** Only layouts worth more than this are asked for. */
  readonly above?: number;
}

/**
 * The most valuable choice of boxes that fits on one sheet, cut in any way: counts are chosen box by box, the most
 * valuable by area first, bounded by knapsacks, and each choice is proved to fit or not to fit.
 * @param oracle for these boxes and this sheet
 */
export function* bestValueInSteps(
  boxes: readonly ValuedBox[],
  width: number,
  height: number,
  limits: ValueLimits,
  oracle: FitOracle,
): Trial<ValuedLayout> {
  const density = (index: number) => {
    const box = boxes[index] as ValuedBox;
    return box.value / (box.width * box.height);
  };
  const order = boxes
    .map((_, index) => index)
    .filter((index) => (boxes[index] as ValuedBox).value > 0 && (boxes[index] as ValuedBox).count > 0)
    .sort((one, other) => density(other) - density(one));
  const sorted = order.map((index) => boxes[index] as ValuedBox);
  const most = valueBound(sorted, width, height);
  const chosen = sorted.map(() => 0);
  let best: { readonly value: number; readonly spots: readonly Spot[] } = { value: 0, spots: [] };
  const floor = () => Math.max(best.value, limits.above ?? 0);
  let left = 0; // the highest bound of what was left unsearched
  let nodes = 0;
  let open = true;

  /** Boxes before `from` are chosen, and known to fit as `spots`. */
  function* choose(from: number, value: number, spots: readonly Spot[]): Trial<void> {
    if (value > best.value) best = { value, spots };
    if (from === sorted.length) return;
    const bound = most(from, chosen, value);
    if (bound <= floor()) return;
    if (!open || nodes >= limits.maxNodes) {
      left = Math.max(left, bound);
      return;
    }
    const box = sorted[from] as ValuedBox;
    const layouts = [spots];
    for (let count = 1; count <= box.count; count++) {
      chosen[from] = count;
      const above = most(from + 1, chosen, value + count * box.value);
      if (above < 0) break;
      const counts = boxes.map(() => 0);
      order.forEach((number, index) => {
        counts[number] = chosen[index] ?? 0;
      });
      const fitting = oracle.fit(counts, limits.nodesPerChoice);
      nodes += 1 + fitting.nodes;
      open &&= yield 1 + fitting.nodes;
      if (fitting.spots === undefined) {
        if (!fitting.settled) left = Math.max(left, most(from, chosen, value + count * box.value));
        break;
      }
      layouts.push(fitting.spots);
    }
    for (let count = layouts.length - 1; count >= 0; count--) {
      chosen[from] = count;
      yield* choose(from + 1, value + count * box.value, layouts[count] as readonly Spot[]);
    }
    chosen[from] = 0;
  }
  yield* choose(0, 0, []);

  const bound = Math.max(floor(), left);
  return { ...best, bound, proved: left <= best.value && floor() === best.value, nodes };
}

/** The same in one go. */
export const bestValue = (
  boxes: readonly ValuedBox[],
  width: number,
  height: number,
  limits: ValueLimits,
): ValuedLayout => finished(bestValueInSteps(boxes, width, height, limits, fitOracle(boxes, width, height)));
