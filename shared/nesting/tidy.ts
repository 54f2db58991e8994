import { areaOf, type Box, type Spot } from './box.ts';
import { type Job, mayLie, type Room } from './job.ts';
import { offcutsOf } from './offcuts.ts';
import { packStrip } from './pack-strip.ts';
import { countsOf, type Pattern } from './plan.ts';

/** Packings that are tried along each side, fewer where each costs more; positions of the exact search, for few boxes. */
const limitsFor = (copies: number) => ({
  seed: 1,
  evaluations: Math.max(2, Math.min(60, Math.floor(3000 / copies))),
  maxNodes: 2000,
});

/** The same boxes on the same sheet, pushed together along one side or the other so that the largest offcut is largest. */
export function tidied(job: Job, pattern: Pattern): Pattern {
  const { width, height } = job.rooms[pattern.room] as Room;
  const counts = countsOf(pattern.spots, job.boxes.length);
  const numbers = counts.flatMap((count, box) => (count > 0 ? [box] : []));
  const boxes = numbers.map((box): Box => ({ ...(job.boxes[box] as Box), count: counts[box] ?? 0 }));
  const upright = packStrip(boxes, width, limitsFor(pattern.spots.length));
  const onSide = packStrip(boxes.map(turnedOver), height, limitsFor(pattern.spots.length));
  const candidates: (readonly Spot[])[] = [pattern.spots];
  const own = (spots: readonly Spot[]) => spots.map((spot) => ({ ...spot, box: numbers[spot.box] ?? 0 }));
  if (upright.height <= height) candidates.push(own(upright.spots));
  if (onSide.height <= width) candidates.push(own(onSide.spots.map(turnedBack)));
  const best = candidates
    .map((spots) => ({ spots, offcut: largestOffcut(spots, width, height) }))
    .reduce((one, other) => (other.offcut > one.offcut * (1 + 1e-9) ? other : one));
  return { ...pattern, spots: best.spots };
}

/** Slivers are of no use, and looking for them costs much. */
const leastShare = 0.03;

function largestOffcut(spots: readonly Spot[], width: number, height: number): number {
  const [largest] = offcutsOf(width, height, spots, leastShare * Math.min(width, height));
  return largest === undefined ? 0 : areaOf(largest);
}

const turnedOver = (box: Box): Box => ({ ...box, width: box.height, height: box.width });

const turnedBack = (spot: Spot): Spot => ({
  ...spot,
  x: spot.y,
  y: spot.x,
  width: spot.height,
  height: spot.width,
});

/** Uses for every sheet the smallest on which its boxes lie, as far as there are any. */
export function onSmallerSheets(job: Job, patterns: readonly Pattern[]): readonly Pattern[] {
  const stock = new Map(job.stock);
  for (const { room, times } of patterns) add(stock, job.rooms[room]?.sheet ?? -1, -times);
  return patterns.flatMap((pattern) => {
    const now = job.rooms[pattern.room] as Room;
    const smaller = job.rooms
      .map((room, index) => ({ room, index }))
      .filter(({ room }) => room.area < now.area && (stock.get(room.sheet) ?? 0) > 0)
      .filter(({ room }) => pattern.spots.every(({ box }) => mayLie(job, room, box)))
      .sort((one, other) => one.room.area - other.room.area);
    for (const { room, index } of smaller) {
      const spots = packedInto(job, pattern, room);
      if (spots === undefined) continue;
      const times = Math.min(pattern.times, stock.get(room.sheet) ?? 0);
      add(stock, room.sheet, -times);
      add(stock, now.sheet, times);
      const rest = pattern.times - times;
      return [{ room: index, spots, times }, ...(rest > 0 ? [{ ...pattern, times: rest }] : [])];
    }
    return [pattern];
  });
}

const add = (stock: Map<number, number>, sheet: number, times: number): unknown =>
  stock.set(sheet, (stock.get(sheet) ?? 0) + times);

function packedInto(job: Job, { spots }: Pattern, { width, height }: Room): readonly Spot[] | undefined {
  const counts = countsOf(spots, job.boxes.length);
  const numbers = counts.flatMap((count, box) => (count > 0 ? [box] : []));
  const boxes = numbers.map((box): Box => ({ ...(job.boxes[box] as Box), count: counts[box] ?? 0 }));
  if (boxes.reduce((sum, box) => sum + box.count * areaOf(box), 0) > width * height) return undefined;
  const fits = boxes.every((box) => Math.min(box.width, box.turns ? box.height : box.width) <= width);
  if (!fits) return undefined;
  const strip = packStrip(boxes, width, limitsFor(spots.length));
  return strip.height <= height
    ? strip.spots.map((spot) => ({ ...spot, box: numbers[spot.box] ?? 0 }))
    : undefined;
}
