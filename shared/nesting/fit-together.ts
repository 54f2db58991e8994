import { areaOf, type Box, posesWithin, type Spot, totalArea } from './box.ts';
import { indexUpTo, reachable } from './reachable.ts';
import { scalesOf, weigh, weightSlip } from './scales.ts';
import { areaSlip, type Choice, type Ground, searchPositions } from './search-positions.ts';

export interface Fitting {
  /** Where every copy lies, if they fit. */
  readonly spots?: readonly Spot[];
  /** Whether it is certain that they fit, or that they do not. */
  readonly settled: boolean;
  /** Positions looked at: what the search cost. */
  readonly nodes: number;
}

/** Orders in which boxes are tried, the largest first. Which one finds a packing soon differs from case to case. */
const orders: readonly ((box: Box) => number)[] = [
  areaOf,
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => width + height,
  ({ width }) => width,
];

/** Every order gets so many nodes, then several times as many, and so on: most searches that find, find soon. */
const firstNodes = 1000;
const growth = 6;

/**
 * Whether all copies of all boxes fit into one rectangle: settled by weights, or by a complete search upright and on
 * its side.
 * @param maxNodes the search gives up, unsettled, after about so many positions
 */
export function fitTogether(boxes: readonly Box[], width: number, height: number, maxNodes: number): Fitting {
  const present = boxes.map((box) => (box.count > 0 ? box : { ...box, width: 0, height: 0 }));
  const counts = boxes.map(({ count }) => count);
  if (present.some((box) => posesWithin(box, width, height).length === 0)) return { settled: true, nodes: 0 };
  if (scalesOf(boxes, width, height).some((scale) => weigh(scale, counts) > 1 + weightSlip))
    return { settled: true, nodes: 0 };

  const upright = viewOf(boxes, width, height);
  const onSide = viewOf(boxes.map(onItsSide), height, width);
  if (upright.ground.spare < 0 || onSide.ground.spare < 0) return { settled: true, nodes: 0 };
  let nodes = 0;
  let end: Fitting | undefined;
  const tried = (view: View, order: (box: Box) => number, limit: number): Fitting | undefined => {
    const search = searchPositions(inOrder(view.choices, order, boxes), view.ground, limit, view.failed);
    nodes += search.nodes;
    if (search.spots !== undefined)
      end = { spots: view === upright ? search.spots : search.spots.map(fromItsSide), settled: true, nodes };
    else if (!search.cut) end = { settled: view.complete, nodes };
    return end;
  };
  for (let limit = firstNodes; nodes + limit < maxNodes / 2; limit *= growth)
    for (const order of orders)
      for (const view of [upright, onSide]) {
        if (nodes + limit > maxNodes) continue;
        const done = tried(view, order, limit);
        if (done !== undefined) return done;
      }
  return tried(upright, areaOf, maxNodes - nodes) ?? { settled: false, nodes };
}

interface View {
  readonly choices: readonly Choice[];
  readonly ground: Ground;
  readonly complete: boolean;
  readonly failed: Set<string>;
}

function viewOf(boxes: readonly Box[], width: number, height: number): View {
  const present = boxes.filter(({ count }) => count > 0);
  const columns = reachable(present, 'width', { width, height }, true);
  const rows = reachable(present, 'height', { width, height }, true);
  const complete = columns.complete && rows.complete;
  const right = complete ? (columns.lengths.at(-1) ?? 0) : width;
  const top = complete ? (rows.lengths.at(-1) ?? 0) : height;
  const spare = right * top - totalArea(present);
  return {
    choices: boxes.flatMap((box, index) =>
      box.count > 0 ? [{ box: index, count: box.count, poses: posesWithin(box, width, height) }] : [],
    ),
    ground: {
      right,
      top,
      spare: spare > -areaSlip(width, height) ? Math.max(0, spare) : spare,
      columns: columns.lengths.slice(0, indexUpTo(columns.lengths, right) + 1),
    },
    complete,
    failed: new Set(),
  };
}

const inOrder = (
  choices: readonly Choice[],
  order: (box: Box) => number,
  boxes: readonly Box[],
): readonly Choice[] =>
  choices.toSorted(
    (one, other) => order(boxes[other.box] as Box) - order(boxes[one.box] as Box) || one.box - other.box,
  );

const onItsSide = (box: Box): Box => ({ ...box, width: box.height, height: box.width });

const fromItsSide = (spot: Spot): Spot => ({
  ...spot,
  x: spot.y,
  y: spot.x,
  width: spot.height,
  height: spot.width,
});
