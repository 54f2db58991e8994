import { areaOf, type Spot } from './box.ts';
import type { Job } from './job.ts';

/** One way of filling a room, for so many sheets. */
export interface Pattern {
  /** Number of the room in the job. */
  readonly room: number;
  readonly spots: readonly Spot[];
  readonly times: number;
}

export interface Plan {
  readonly patterns: readonly Pattern[];
  /** Copies left over by number of the box, for want of sheets. */
  readonly left: readonly number[];
}

export const sheetsOf = ({
  patterns,
}: {
  readonly patterns: readonly { readonly times: number }[];
}): number => patterns.reduce((sum, { times }) => sum + times, 0);

export const sheetArea = (job: Job, { patterns }: Plan): number =>
  patterns.reduce((sum, { room, times }) => sum + times * (job.rooms[room]?.area ?? 0), 0);

export const leftArea = (job: Job, { left }: Plan): number =>
  job.boxes.reduce((sum, box, index) => sum + areaOf(box) * (left[index] ?? 0), 0);

/** Area of the boxes beside that of the sheet. */
export const fillOf = (job: Job, { room, spots }: Pick<Pattern, 'room' | 'spots'>): number =>
  spots.reduce((sum, spot) => sum + areaOf(spot), 0) / (job.rooms[room]?.area ?? 1);

/** Copies of each box among spots. */
export function countsOf(spots: readonly Spot[], boxes: number): number[] {
  const counts = Array.from({ length: boxes }, () => 0);
  for (const { box } of spots) counts[box] = (counts[box] ?? 0) + 1;
  return counts;
}

/** The same for layouts with the same boxes on the same sheet. */
export function patternKey({ room, spots }: Pick<Pattern, 'room' | 'spots'>): string {
  const counts = new Map<number, number>();
  for (const { box } of spots) counts.set(box, (counts.get(box) ?? 0) + 1);
  return `${room}:${[...counts]
    .sort(([one], [other]) => one - other)
    .map(([box, count]) => `${box}x${count}`)
    .join(' ')}`;
}

/** Patterns with the same boxes on the same sheet become one. */
export function merged(patterns: readonly Pattern[]): readonly Pattern[] {
  const byKey = new Map<string, Pattern>();
  for (const pattern of patterns) {
    const key = patternKey(pattern);
    const known = byKey.get(key);
    byKey.set(key, known === undefined ? pattern : { ...known, times: known.times + pattern.times });
  }
  return [...byKey.values()];
}

/** Negative where `one` is better: it leaves less, then has fewer sheets, then less paper, then fewer layouts. */
export function comparePlans(job: Job, one: Plan, other: Plan): number {
  return (
    clearly(leftArea(job, one) - leftArea(job, other)) ||
    sheetsOf(one) - sheetsOf(other) ||
    clearly(sheetArea(job, one) / sheetArea(job, other) - 1) ||
    one.patterns.length - other.patterns.length
  );
}

/** Zero for what is rounding in sums of areas. */
const clearly = (difference: number): number => (Math.abs(difference) < 1e-9 ? 0 : difference);
