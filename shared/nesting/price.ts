import { bestValueInSteps, type ValuedBox } from './best-value.ts';
import type { Spot } from './box.ts';
import type { Trial } from './control.ts';
import type { FitOracle } from './fit-oracle.ts';
import { type GuillotineTable, guillotineTable } from './guillotine-table.ts';
import { type Job, mayLie, type Room } from './job.ts';
import { pinwheel } from './pinwheel.ts';
import { fitsRoom } from './sheet-bound.ts';
import { valueBound } from './value-bound.ts';

export interface Priced {
  readonly spots: readonly Spot[];
  readonly value: number;
  /** No layout in the room is worth more. */
  readonly bound: number;
}

/** Lengths of a table of straight cuts: few enough to be quick, then enough for better layouts. */
const tableLengths = [100, 400];

/** Sums in a table that cost as much as one position. */
const sumsPerNode = 500;

const tableCost = ({ columns, rows }: GuillotineTable): number =>
  (columns.length * rows.length * (columns.length + rows.length)) / 4 / sumsPerNode;

/** So that no single step takes long. */
const mostNodesPerChoice = 20_000;

/**
 * A valuable layout for a room, found by straight cuts or else by search, and what none exceeds. Stops at the first that
 * is worth clearly more than `above`.
 */
export function* price(
  job: Job,
  roomNumber: number,
  values: readonly number[],
  above: number,
  maxNodes: number,
  oracle: FitOracle,
): Trial<Priced> {
  const room = job.rooms[roomNumber] as Room;
  const boxes = job.boxes.map((box, number): ValuedBox => {
    const value = values[number] ?? 0;
    const counts = value > 0 && fitsRoom(job, roomNumber, number) && mayLie(job, room, number);
    return { ...box, count: counts ? box.count : 0, value };
  });
  const root = valueBound(boxes, room.width, room.height)(
    0,
    boxes.map(() => 0),
    0,
  );
  if (root <= above) return { spots: [], value: 0, bound: root };

  for (const lengths of tableLengths) {
    const table = guillotineTable(boxes, room.width, room.height, true, undefined, lengths);
    for (const layout of [
      table.layoutOf(room.width, room.height),
      pinwheel(table, room.width, room.height),
    ]) {
      const spots = withinCounts(layout, boxes);
      const value = spots.reduce((sum, { box }) => sum + (boxes[box]?.value ?? 0), 0);
      if (value > above) return { spots, value, bound: root };
    }
    if (!(yield tableCost(table)) || table.complete) break;
  }

  const found = yield* bestValueInSteps(
    boxes,
    room.width,
    room.height,
    { maxNodes, nodesPerChoice: Math.min(mostNodesPerChoice, maxNodes / 4), above },
    oracle,
  );
  return {
    spots: found.spots,
    value: found.value,
    bound: Math.min(root, found.bound),
  };
}

/** Without the copies that are too many. */
function withinCounts(spots: readonly Spot[], boxes: readonly ValuedBox[]): readonly Spot[] {
  const left = boxes.map(({ count }) => count);
  return spots.filter(({ box }) => {
    left[box] = (left[box] ?? 0) - 1;
    return (left[box] ?? 0) >= 0;
  });
}
