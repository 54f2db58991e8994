import { type Box, posesWithin } from './box.ts';

/**
 * Weighs boxes against one sheet so that whatever fits together on the sheet weighs 1 at most, boxes turned as suits them.
 */
export type Scale = readonly number[];

/** Maps a length of a side of `whole` to a share of it, so that lengths which fit in a row add up to 1 at most. */
type Measure = (length: number, whole: number) => number;

const plain: Measure = (length, whole) => length / whole;

/** Counts only what is longer than half. */
const halves: Measure = (length, whole) => (2 * length > whole ? 1 : 2 * length === whole ? 0.5 : 0);

/** Rounds to whole k-ths; a length that is exactly a multiple of 1/(k+1) counts as it is. */
const parts =
  (k: number): Measure =>
  (length, whole) =>
    (length * (k + 1)) % whole === 0 ? length / whole : Math.floor((length * (k + 1)) / whole) / k;

/** Leaves out what is shorter than `least`, and counts what leaves less room than that as the whole. */
const beyond =
  (least: number): Measure =>
  (length, whole) =>
    length > whole - least ? 1 : length < least ? 0 : length / whole;

/** Limits how many scales are tried, and with that the time. */
const mostThresholds = 8;

function measures(sides: readonly number[], whole: number): readonly Measure[] {
  const shorter = [...new Set(sides.filter((side) => 2 * side <= whole))].sort((one, other) => other - one);
  const step = Math.max(1, Math.ceil(shorter.length / mostThresholds));
  const thresholds = shorter.filter((_, index) => index % step === 0);
  return [plain, halves, parts(2), parts(3), parts(4), ...thresholds.map(beyond)];
}

/**
 * Scales by dual feasible functions: the product of one measure across and one along.
 * Source: Fekete & Schepers, "New classes of fast lower bounds for bin packing problems", Math. Program. 91 (2001)
 * 11-31 (from memory). Of a box that may turn the lighter pose counts, since it may lie that way.
 */
export function scalesOf(boxes: readonly Box[], width: number, height: number): readonly Scale[] {
  const lying = boxes.map((box) => posesWithin(box, width, height));
  const sides = (side: 'width' | 'height') => lying.flatMap((list) => list.map((pose) => pose[side]));
  return measures(sides('width'), width).flatMap((across) =>
    measures(sides('height'), height).map((along) =>
      lying.map((list) =>
        Math.min(
          Number.POSITIVE_INFINITY,
          ...list.map((pose) => across(pose.width, width) * along(pose.height, height)),
        ),
      ),
    ),
  );
}

/** What so many of each box weigh. */
export const weigh = (scale: Scale, counts: readonly number[]): number =>
  scale.reduce(
    (sum, weight, index) => sum + ((counts[index] ?? 0) > 0 ? weight * (counts[index] ?? 0) : 0),
    0,
  );

/** Far above rounding in the sums, far below what one box weighs. */
export const weightSlip = 1e-9;
