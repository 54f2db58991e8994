import { areaOf, posesWithin } from './box.ts';
import type { Job } from './job.ts';
import { scalesOf, weigh, weightSlip } from './scales.ts';

/**
 * The least number of sheets by area and by weights: every sheet lies within one as wide as the widest and as high as
 * the highest, on which boxes weigh 1 at most, and no more sheets of each size than there are can help.
 */
export function sheetBound(job: Job): number {
  if (job.boxes.length === 0) return 0;
  const width = Math.max(...job.rooms.map((room) => room.width));
  const height = Math.max(...job.rooms.map((room) => room.height));
  const counts = job.boxes.map(({ count }) => count);
  const weights = scalesOf(job.boxes, width, height).map((scale) => weigh(scale, counts));
  return Math.max(byArea(job), ...weights.map((weight) => Math.ceil(weight - weightSlip * counts.length)));
}

/** The largest sheets first, as many as there are, until all boxes' area is covered. */
function byArea(job: Job): number {
  let left = job.boxes.reduce((sum, box) => sum + box.count * areaOf(box), 0) * (1 - 1e-9);
  const bySheet = new Map(job.rooms.map((room) => [room.sheet, room]));
  const rooms = [...bySheet.values()].sort((one, other) => areaOf(other) - areaOf(one));
  let sheets = 0;
  for (const room of rooms) {
    const used = Math.min(Math.ceil(left / areaOf(room)), job.stock.get(room.sheet) ?? 0);
    sheets += used;
    left -= used * areaOf(room);
    if (left <= 0) break;
  }
  return sheets;
}

/** Boxes that may lie in a room, in its size. */
export const fitsRoom = (job: Job, room: number, box: number): boolean => {
  const { width, height } = job.rooms[room] as Job['rooms'][number];
  return posesWithin(job.boxes[box] as Job['boxes'][number], width, height).length > 0;
};
