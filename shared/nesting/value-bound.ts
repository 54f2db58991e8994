import type { ValuedBox } from './best-value.ts';
import { type Scale, scalesOf } from './scales.ts';

/** The most that boxes from number `from` on can add, if at most so many of each may be added to what is chosen. */
export type ValueBound = (from: number, chosen: readonly number[], value: number) => number;

/** How many of the scales are kept: those that bound the value best when nothing is chosen. */
const keptScales = 10;

interface Knapsack {
  readonly scale: Scale;
  /** Numbers of boxes, the most valuable by weight first. */
  readonly order: readonly number[];
}

/**
 * Bounds the value of what fits on a sheet by fractional knapsacks, one per scale; fixed choices use up each knapsack
 * as they weigh. Where all values are whole, so is the bound.
 * @returns the bound, and -1 where the chosen boxes alone are too heavy
 */
export function valueBound(boxes: readonly ValuedBox[], width: number, height: number): ValueBound {
  const knapsacks = scalesOf(boxes, width, height).map((scale): Knapsack => {
    // largest number, not infinity, for boxes of no weight: differences must be numbers
    const density = (index: number) =>
      Math.min(Number.MAX_VALUE, (boxes[index]?.value ?? 0) / (scale[index] ?? 0));
    const order = boxes
      .map((_, index) => index)
      .filter((index) => (boxes[index]?.value ?? 0) > 0 && (scale[index] ?? 0) < Number.POSITIVE_INFINITY);
    return { scale, order: order.sort((one, other) => density(other) - density(one)) };
  });
  const none = boxes.map(() => 0);
  const fill = ({ scale, order }: Knapsack, from: number, chosen: readonly number[]): number => {
    let room = 1 + 1e-9;
    for (let index = 0; index < scale.length; index++)
      if ((chosen[index] ?? 0) > 0) room -= (scale[index] ?? 0) * (chosen[index] ?? 0);
    if (room < 0) return -1;
    let value = 0;
    for (const index of order) {
      if (index < from) continue;
      const box = boxes[index] as ValuedBox;
      const weight = scale[index] ?? 0;
      const count = weight === 0 ? box.count : Math.min(box.count, room / weight);
      value += count * box.value;
      room -= count * weight;
      if (room <= 0) break;
    }
    return value;
  };
  const kept = knapsacks
    .map((knapsack) => ({ knapsack, value: fill(knapsack, 0, none) }))
    .sort((one, other) => one.value - other.value)
    .slice(0, keptScales)
    .map(({ knapsack }) => knapsack);
  const whole = boxes.every(({ value }) => Number.isInteger(value));
  return (from, chosen, value) => {
    let least = Number.POSITIVE_INFINITY;
    for (const knapsack of kept) {
      const most = fill(knapsack, from, chosen);
      if (most < 0) return -1;
      least = Math.min(least, most);
    }
    return whole ? Math.floor(value + least + 1e-6) : value + least;
  };
}
