import { areaOf, type Box } from './box.ts';
import type { Job } from './job.ts';
import type { LinearProgram, LinearRow } from './linear-program.ts';
import { countsOf, merged, type Pattern, type Plan } from './plan.ts';

/**
 * How often to use each pattern so that every box is there as often as asked for, on the fewest sheets; then, where
 * numbers are whole, on the least paper. Rows: one per box, then one per kind of sheet that is limited.
 * Source: Gilmore & Gomory, "A linear programming approach to the cutting stock problem", Oper. Res. 9 (1961) 849-859
 * (from memory).
 */
export function masterProgram(
  job: Job,
  patterns: readonly Pattern[],
  whole: { readonly maxNodes: number; readonly mostSheets: number } | undefined,
): LinearProgram {
  const counts = patterns.map(({ spots }) => countsOf(spots, job.boxes.length));
  const largest = Math.max(...job.rooms.map(({ area }) => area));
  // all paper together counts for less than one sheet
  const paperCost = whole === undefined ? 0 : 0.5 / (whole.mostSheets + 1) / largest;
  return {
    costs: patterns.map(({ room }) => 1 + paperCost * (job.rooms[room]?.area ?? 0)),
    rows: [
      ...job.boxes.map(
        ({ count }, box): LinearRow => ({
          terms: counts.flatMap((each, pattern) => ((each[box] ?? 0) > 0 ? [[pattern, each[box] ?? 0]] : [])),
          kind: 'at least',
          limit: count,
        }),
      ),
      ...limitedSheets(job).map(
        (sheet): LinearRow => ({
          terms: patterns.flatMap(({ room }, pattern) =>
            job.rooms[room]?.sheet === sheet ? [[pattern, 1]] : [],
          ),
          kind: 'at most',
          limit: job.stock.get(sheet) ?? 0,
        }),
      ),
    ],
    whole: whole !== undefined,
    ...(whole === undefined ? {} : { maxNodes: whole.maxNodes }),
  };
}

/** Sheets of which there are only so many, in the order of their rows. */
export const limitedSheets = (job: Job): readonly number[] =>
  [...job.stock].filter(([, count]) => Number.isFinite(count)).map(([sheet]) => sheet);

/** The plan that uses each pattern so often, without the copies that nobody asked for. */
export function planOf(job: Job, patterns: readonly Pattern[], times: readonly number[]): Plan {
  const used = patterns
    .map((pattern, index) => ({ ...pattern, times: Math.round(times[index] ?? 0) }))
    .filter((pattern) => pattern.times > 0);
  const surplus = job.boxes.map(({ count }) => -count);
  for (const pattern of used)
    for (const { box } of pattern.spots) surplus[box] = (surplus[box] ?? 0) + pattern.times;
  const kept = [...used];
  const largestFirst = job.boxes
    .map((_, box) => box)
    .sort((one, other) => areaOf(job.boxes[other] as Box) - areaOf(job.boxes[one] as Box));
  for (const box of largestFirst)
    while ((surplus[box] ?? 0) > 0)
      surplus[box] = (surplus[box] ?? 0) - removeFromOne(kept, box, surplus[box] ?? 0);
  return {
    patterns: merged(kept.filter(({ spots }) => spots.length > 0)),
    left: surplus.map((count) => Math.max(0, -count)),
  };
}

/** Takes copies of a box off the sheet with the fewest spots among those with most copies of it. @returns how many */
function removeFromOne(patterns: Pattern[], box: number, most: number): number {
  const copies = (pattern: Pattern) => pattern.spots.filter((spot) => spot.box === box).length;
  let chosen = -1;
  for (let index = 0; index < patterns.length; index++) {
    const [one, best] = [patterns[index] as Pattern, patterns[chosen]];
    if (copies(one) === 0) continue;
    if (best === undefined || Math.min(most, copies(one)) > Math.min(most, copies(best))) chosen = index;
    else if (
      Math.min(most, copies(one)) === Math.min(most, copies(best)) &&
      one.spots.length < best.spots.length
    )
      chosen = index;
  }
  const pattern = patterns[chosen] as Pattern;
  const removed = Math.min(most, copies(pattern));
  let skip = removed;
  const spots = pattern.spots.filter((spot) => spot.box !== box || skip-- <= 0);
  if (pattern.times > 1) patterns[chosen] = { ...pattern, times: pattern.times - 1 };
  else patterns.splice(chosen, 1);
  patterns.push({ ...pattern, times: 1, spots });
  return removed;
}
