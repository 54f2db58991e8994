import { areaOf, type Box, posesWithin, type Spot, totalArea } from './box.ts';
import { fillByLedge, shelfOf } from './fill-by-ledge.ts';
import {
  closedFirst,
  fillByOrder,
  queueOf,
  type Rule,
  rules,
  type SizeKey,
  sizeKeys,
} from './fill-by-order.ts';
import { fitTogether } from './fit-together.ts';
import { type Random, randomFrom } from './random.ts';
import { ranksBy } from './ranks.ts';
import { indexUpTo, reachable } from './reachable.ts';

export interface StripLimits {
  readonly seed: number;
  /** Packings that are tried before the exact search. */
  readonly evaluations: number;
  /** Positions that the exact search may look at for one height; 0 leaves it out. */
  readonly maxNodes: number;
}

export interface StripLayout {
  readonly spots: readonly Spot[];
  /** Length of strip used. */
  readonly height: number;
  /** No layout is shorter. */
  readonly bound: number;
  readonly proved: boolean;
}

/** More copies than this are too many for the exact search to be worth its time. */
const mostForExact = 40;
const mostForLow = 1500;
const mostForStirred = 600;
const mostSingles = 400;

/**
 * Packs all copies of all boxes onto a strip of one width with the least height: many packings by ledges, then, for few
 * boxes, a complete search from the least height that the area allows.
 * @throws {RangeError} when a box is wider than the strip
 */
export function packStrip(boxes: readonly Box[], width: number, limits: StripLimits): StripLayout {
  const tooWide = boxes.find((box) => posesWithin(box, width, Number.POSITIVE_INFINITY).length === 0);
  if (tooWide !== undefined)
    throw new RangeError(`a box of ${tooWide.width} by ${tooWide.height} is wider than the strip, ${width}`);
  const flattest = (box: Box) =>
    Math.min(...posesWithin(box, width, Number.POSITIVE_INFINITY).map((pose) => pose.height));
  const least = Math.max(totalArea(boxes) / width, ...boxes.map(flattest));
  const first = manyPackings(boxes, width, least, limits);
  if (first.height <= least * (1 + 1e-12) || copiesOf(boxes) > mostForExact || limits.maxNodes === 0)
    return { ...first, bound: boundUpTo(least, first.height), proved: first.height <= least * (1 + 1e-12) };
  return shorter(boxes, width, least, first, limits.maxNodes);
}

interface Packing {
  readonly spots: readonly Spot[];
  readonly height: number;
}

const boundUpTo = (least: number, height: number): number =>
  Math.min(height, Number.isInteger(height) ? Math.ceil(least * (1 - 1e-12)) : least);

/** Looks for packings shorter than the one given, from the least height upwards; edges lie at sums of heights only. */
function shorter(
  boxes: readonly Box[],
  width: number,
  least: number,
  found: Packing,
  maxNodes: number,
): StripLayout {
  const { lengths, complete } = reachable(boxes, 'height', { width, height: found.height }, true);
  let bound = boundUpTo(least, found.height);
  if (!complete) return { ...found, bound, proved: bound === found.height };
  for (const height of lengths.slice(indexUpTo(lengths, least * (1 - 1e-12)) + 1)) {
    if (height >= found.height) break;
    bound = height;
    const { spots, settled } = fitTogether(boxes, width, height, maxNodes);
    if (spots !== undefined) return { spots, height, bound, proved: true };
    if (!settled) return { ...found, bound, proved: false };
  }
  return { ...found, bound: found.height, proved: true };
}

/** Tries ranks of the boxes, and changes of the best ranks, until a packing is as low as `least` or none are left to try. */
function manyPackings(
  boxes: readonly Box[],
  width: number,
  least: number,
  { seed, evaluations }: StripLimits,
): Packing {
  const random = randomFrom(seed);
  const single = singles(boxes);
  const shelf = shelfOf(single.boxes);
  const tried = (ranks: readonly number[]): Packing =>
    packing(
      fillByLedge(shelf, counted(single.boxes), width, Number.POSITIVE_INFINITY, ranks).map((spot) => ({
        ...spot,
        box: single.numbers[spot.box] ?? 0,
      })),
    );
  const starts = [areaOf, ({ height }: Box) => height, (box: Box) => box.width + box.height].map((size) =>
    ranksBy(single.boxes, size),
  );
  let ranks: readonly number[] = starts[0] ?? [];
  let current = tried(ranks);
  let best = [current, ...lowPackings(boxes, width)].reduce(lower);
  for (let turn = 1; turn < evaluations && best.height > least * (1 + 1e-12); turn++) {
    if (turn % 4 === 0) best = lower(best, stirredLow(boxes, width, random) ?? best);
    const next = starts[turn] ?? changed(ranks, random);
    const packing = tried(next);
    if (packing.height <= current.height) [current, ranks] = [packing, next];
    best = lower(best, current);
  }
  return best;
}

const lower = (one: Packing, other: Packing): Packing => (other.height < one.height ? other : one);

/** Every copy as a box of its own, as long as there are few, so that copies can have ranks of their own. */
function singles(boxes: readonly Box[]): {
  readonly boxes: readonly Box[];
  readonly numbers: readonly number[];
} {
  if (copiesOf(boxes) > mostSingles) return { boxes, numbers: boxes.map((_, box) => box) };
  const numbers = boxes.flatMap(({ count }, box) => Array.from({ length: count }, () => box));
  return { boxes: numbers.map((box) => ({ ...(boxes[box] as Box), count: 1 })), numbers };
}

const lowRules = [rules.low, closedFirst];
const lowOrders = [sizeKeys.tall, sizeKeys.wide, sizeKeys.area, sizeKeys.longest];

/** Each box as low as it goes, in a few orders, upright or as it may turn; for few copies, since its cost grows faster. */
function lowPackings(boxes: readonly Box[], width: number): readonly Packing[] {
  if (copiesOf(boxes) > mostForLow) return [];
  const upright = boxes.every((box) => box.width <= width)
    ? [boxes.map((box) => ({ ...box, turns: false }))]
    : [];
  return [boxes, ...upright].flatMap((lying) =>
    lowOrders.flatMap((key) => lowRules.map((rule) => low(lying, width, key, rule))),
  );
}

/** The same in an order changed by chance, some boxes upright. */
function stirredLow(boxes: readonly Box[], width: number, random: Random): Packing | undefined {
  if (copiesOf(boxes) > mostForStirred) return undefined;
  const lying = boxes.map((box) => ({
    ...box,
    turns: box.turns && (box.width > width || random.next() < 0.6),
  }));
  const strength = random.next();
  const key = lowOrders[random.below(lowOrders.length)] ?? sizeKeys.tall;
  const rule = lowRules[random.below(lowRules.length)] ?? rules.low;
  return low(lying, width, key, rule, () => 1 + strength * (random.next() - 0.5));
}

const low = (boxes: readonly Box[], width: number, key: SizeKey, rule: Rule, stir?: () => number): Packing =>
  packing(fillByOrder(queueOf(boxes, counted(boxes), key, stir), width, Number.POSITIVE_INFINITY, rule));

const copiesOf = (boxes: readonly Box[]): number => boxes.reduce((sum, { count }) => sum + count, 0);

const counted = (boxes: readonly Box[]): number[] => boxes.map(({ count }) => count);

const packing = (spots: readonly Spot[]): Packing => ({
  spots,
  height: spots.reduce((most, spot) => Math.max(most, spot.y + spot.height), 0),
});

/** Two ranks exchanged, or one box ranked before another. */
function changed(ranks: readonly number[], random: Random): readonly number[] {
  const [one, other] = [random.below(ranks.length), random.below(ranks.length)];
  if (random.next() < 0.5) return ranks.with(one, ranks[other] ?? 0).with(other, ranks[one] ?? 0);
  return ranks.with(one, (ranks[other] ?? 0) - 0.5 * random.next());
}
