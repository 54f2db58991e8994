import { areaOf, type Box, type Pose, poses, type Spot } from './box.ts';
import { fillByLedge, shelfOf } from './fill-by-ledge.ts';
import { fillByOrder, queueOf, type Rule, type SizeKey } from './fill-by-order.ts';
import { type Job, mayLie, type Room } from './job.ts';
import { merged, type Pattern, type Plan } from './plan.ts';
import { ranksBy } from './ranks.ts';

/** A way of filling one sheet after the other. */
export type Way = (
  | { readonly by: 'order'; readonly key: SizeKey; readonly rule: Rule }
  | { readonly by: 'ledge'; readonly rank: (box: Box) => number }
) & {
  /** Changes the order of boxes by chance. */
  readonly stir?: () => number;
  /** Whether a box that may turn keeps one pose, so that equal boxes lie alike; asked once for each. */
  readonly keep?: (box: Box) => 'upright' | 'turned' | 'either';
};

/** Which sheet is filled next: the largest that there is, or the one that is filled best. */
export type Preference = 'largest' | 'fullest';

/** More kinds of boxes than this are taken from one queue through all sheets, the largest sheets first. */
const mostForTrials = 400;

export interface Constructed {
  readonly plan: Plan;
  /** Sheets that were filled in trial. */
  readonly evaluations: number;
}

/**
 * Places copies of boxes sheet by sheet. A layout is used again as long as there are copies for it, so that equal sets
 * give equal sheets and cost no more than one.
 * @param counts copies to place by number of the box
 * @param stock sheets there are by number of the sheet
 */
export function construct(
  job: Job,
  counts: readonly number[],
  stock: ReadonlyMap<number, number>,
  way: Way,
  preference: Preference,
): Constructed {
  const left = [...counts];
  const fill = fillerOf(job, left, way);
  const sheets = new Map(stock);
  const sheetOf = (room: number) => job.rooms[room]?.sheet ?? -1;
  const there = (room: number) => sheets.get(sheetOf(room)) ?? 0;
  const rooms = job.rooms
    .map((_, index) => index)
    .sort((one, other) => (job.rooms[other]?.area ?? 0) - (job.rooms[one]?.area ?? 0) || one - other);
  const trial = preference === 'fullest' && rooms.length > 1 && job.boxes.length <= mostForTrials;
  const patterns: Pattern[] = [];
  let evaluations = 0;
  for (;;) {
    let best: { readonly room: number; readonly spots: readonly Spot[]; readonly share: number } | undefined;
    for (const room of rooms) {
      if (there(room) === 0) continue;
      const spots = fill(room, trial ? [...left] : left);
      if (spots.length === 0) continue;
      evaluations++;
      const share = spots.reduce((sum, spot) => sum + areaOf(spot), 0) / (job.rooms[room]?.area ?? 1);
      if (best === undefined || share > best.share) best = { room, spots, share };
      if (!trial) break;
    }
    if (best === undefined) break;
    if (trial) take(best.spots, 1, left);
    const more = Math.min(repeats(best.spots, left), there(best.room) - 1);
    take(best.spots, more, left);
    sheets.set(sheetOf(best.room), there(best.room) - 1 - more);
    patterns.push({ room: best.room, spots: best.spots, times: 1 + more });
  }
  return { plan: { patterns: merged(patterns), left }, evaluations };
}

/** Fills a room from copies that are there; what it takes is gone from them. */
type Fill = (room: number, counts: number[]) => readonly Spot[];

/** @param start the copies that are filled from, unless others are given */
function fillerOf(job: Job, start: number[], way: Way): Fill {
  const stir = way.stir ?? (() => 1);
  const roomOf = (room: number) => job.rooms[room] as Room;
  const may = (room: number) => (box: number) => mayLie(job, roomOf(room), box);
  const kept = new Map(
    job.boxes.map((box) => [box, way.keep === undefined ? poses(box) : keptPoses(job, box, way.keep(box))]),
  );
  const posesOf = (box: Box) => kept.get(box) ?? [];
  if (way.by === 'order') {
    const whole = queueOf(job.boxes, start, way.key, stir, posesOf);
    return (room, counts) => {
      const queue = counts === start ? whole : queueOf(job.boxes, counts, way.key, stir, posesOf);
      return fillByOrder(queue, roomOf(room).width, roomOf(room).height, way.rule, may(room));
    };
  }
  const shelf = shelfOf(job.boxes, posesOf);
  const ranks = ranksBy(job.boxes, (box) => way.rank(box) * stir());
  return (room, counts) =>
    fillByLedge(shelf, counts, roomOf(room).width, roomOf(room).height, ranks, may(room));
}

/** One pose, unless it lies on no sheet. */
function keptPoses(job: Job, box: Box, which: 'upright' | 'turned' | 'either'): readonly Pose[] {
  const one = poses(box).filter(({ turned }) => turned === (which === 'turned'));
  const lies = one.some((pose) =>
    job.rooms.some((room) => pose.width <= room.width && pose.height <= room.height),
  );
  return which === 'either' || !lies ? poses(box) : one;
}

/** How many times the boxes of some spots are there. */
function repeats(spots: readonly Spot[], counts: readonly number[]): number {
  const used = new Map<number, number>();
  for (const { box } of spots) used.set(box, (used.get(box) ?? 0) + 1);
  return Math.min(...[...used].map(([box, times]) => Math.floor((counts[box] ?? 0) / times)));
}

function take(spots: readonly Spot[], times: number, counts: number[]): void {
  for (const { box } of spots) counts[box] = (counts[box] ?? 0) - times;
}
