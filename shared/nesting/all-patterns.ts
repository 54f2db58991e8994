import type { Spot } from './box.ts';
import type { Trial } from './control.ts';
import type { FitOracle } from './fit-oracle.ts';
import { type Job, mayLie } from './job.ts';
import type { Pattern } from './plan.ts';
import { scalesOf, weigh, weightSlip } from './scales.ts';
import { fitsRoom } from './sheet-bound.ts';

export interface PatternLimits {
  /** Choices of boxes that are looked at. */
  readonly maxChoices: number;
  /** Positions of one choice before it is given up. */
  readonly nodesPerChoice: number;
  readonly maxNodes: number;
}

/**
 * Every choice of boxes that fits a room and to which none can be added, with a layout: from these alone some best plan
 * can be made.
 * @param oracle for this room, of all boxes of the job
 * @returns the choices found, and whether they are all
 */
export function* allPatterns(
  job: Job,
  room: number,
  oracle: FitOracle,
  limits: PatternLimits,
): Trial<{ readonly patterns: readonly Pattern[]; readonly complete: boolean }> {
  const { width, height } = job.rooms[room] as Job['rooms'][number];
  const order = job.boxes
    .map((_, index) => index)
    .filter((box) => fitsRoom(job, room, box) && mayLie(job, job.rooms[room] as Job['rooms'][number], box))
    .sort((one, other) => area(job, other) - area(job, one) || one - other);
  const boxes = order.map((index) => job.boxes[index] as Job['boxes'][number]);
  const scales = scalesOf(boxes, width, height).filter((scale) => scale.some((weight) => weight > 0));
  const found: { readonly counts: readonly number[]; readonly spots: readonly Spot[] }[] = [];
  const chosen = boxes.map(() => 0);
  let [choices, nodes, complete, ended] = [0, 0, true, false];

  const known = () =>
    found.some(({ counts }) => chosen.every((count, index) => count <= (counts[index] ?? 0)));
  const tooHeavy = () => scales.some((scale) => weigh(scale, chosen) > 1 + weightSlip);

  function* choose(from: number, spots: readonly Spot[]): Trial<void> {
    if (ended) return;
    if (from === boxes.length) {
      if (!known()) found.push({ counts: [...chosen], spots });
      return;
    }
    const layouts = [spots];
    for (let count = 1; count <= (boxes[from]?.count ?? 0); count++) {
      chosen[from] = count;
      if (tooHeavy()) break;
      if (++choices > limits.maxChoices || nodes > limits.maxNodes) {
        complete = false;
        ended = true;
        break;
      }
      const counts = job.boxes.map(() => 0);
      order.forEach((box, index) => {
        counts[box] = chosen[index] ?? 0;
      });
      const fitting = oracle.fit(counts, limits.nodesPerChoice);
      nodes += 1 + fitting.nodes;
      ended = !(yield 1 + fitting.nodes);
      if (ended) complete = false;
      if (!fitting.settled) complete = false;
      if (fitting.spots === undefined) break;
      layouts.push(fitting.spots);
    }
    for (let count = layouts.length - 1; count >= 0; count--) {
      chosen[from] = count;
      yield* choose(from + 1, layouts[count] as readonly Spot[]);
    }
    chosen[from] = 0;
  }
  yield* choose(0, []);
  const patterns = found.map(({ spots }) => ({ room, times: 0, spots }));
  return { patterns, complete };
}

const area = (job: Job, index: number): number => {
  const { width, height } = job.boxes[index] as Job['boxes'][number];
  return width * height;
};
