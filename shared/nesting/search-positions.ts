import type { Pose, Spot } from './box.ts';
import { flat, type Ledge, lowest, raised } from './skyline.ts';

/** A box with its poses, as the search tries them: in this order. */
export interface Choice {
  readonly box: number;
  readonly count: number;
  readonly poses: readonly Pose[];
}

/** What is searched: it stays the same however the choices are ordered. */
export interface Ground {
  /** Extent of the sheet that boxes can reach. */
  readonly right: number;
  readonly top: number;
  /** Area of it that no box covers. */
  readonly spare: number;
  /** Where left edges can lie, ascending. */
  readonly columns: readonly number[];
}

export interface Search {
  readonly spots?: readonly Spot[];
  readonly nodes: number;
  /** Whether it ended for want of nodes. */
  readonly cut: boolean;
}

/** Failed positions that are remembered, so that none is searched twice. */
const mostRemembered = 100_000;

/**
 * Places all copies of all boxes, or tries every way. It fills the lowest ledge of the skyline from the left. In a packing
 * whose boxes are pushed down and left until none moves, the first box on that ledge lies against its left wall, or is
 * held away from it by a box that juts out over the ledge from the top of that wall; or no box stands on the ledge at
 * all. Every case spends paper that is then lost, and the paper to lose is known beforehand.
 * Builds on Martello, Monaci & Vigo, INFORMS J. Comput. 15 (2003) 310-319 (from memory).
 * @param failed positions known to fail, by number of the box and not by order; what is found to fail is added
 */
export function searchPositions(
  choices: readonly Choice[],
  { right, top, spare, columns }: Ground,
  maxNodes: number,
  failed: Set<string>,
): Search {
  const counts: number[] = [];
  for (const { box, count } of choices) counts[box] = count;
  const countOf = (choice: Choice) => counts[choice.box] as number;
  let missing = choices.reduce((sum, { count }) => sum + count, 0);
  const spots: Spot[] = [];
  let nodes = 0;

  const place = (
    ledges: readonly Ledge[],
    x: number,
    y: number,
    choice: Choice,
    pose: Pose,
    left: number,
  ) => {
    spots.push({ box: choice.box, x, y, width: pose.width, height: pose.height, turned: pose.turned });
    counts[choice.box] = countOf(choice) - 1;
    missing--;
    if (search(raised(ledges, x, pose.width, y + pose.height), left)) return true;
    spots.pop();
    counts[choice.box] = countOf(choice) + 1;
    missing++;
    return false;
  };

  /** @param left area that may still be lost */
  const search = (ledges: readonly Ledge[], left: number): boolean => {
    if (missing === 0) return true;
    if (++nodes > maxNodes) return false;
    const key = `${ledges.map((ledge) => `${ledge.x},${ledge.y}`).join(' ')}|${counts.join(' ')}`;
    if (failed.has(key)) return false;
    if (branch(ledges, left)) return true;
    if (nodes <= maxNodes && failed.size < mostRemembered) failed.add(key);
    return false;
  };

  const branch = (ledges: readonly Ledge[], left: number): boolean => {
    const at = lowest(ledges);
    const { x, width: room, y } = ledges[at] as Ledge;
    const wall = ledges[at - 1]?.y ?? top;
    const low = (pose: Pose) => y + pose.height <= top;
    if (choices.some((choice) => countOf(choice) > 0 && !choice.poses.some(low))) return false;
    for (const choice of choices) {
      if (countOf(choice) === 0) continue;
      for (const pose of choice.poses) {
        if (pose.width > room || !low(pose)) continue;
        if (place(ledges, x, y, choice, pose, left)) return true;
        // away from the wall only beneath a box that juts out from the wall's top
        if (x === 0 || wall >= y + pose.height || wall >= top) continue;
        for (const column of columns) {
          if (column <= x) continue;
          const lost = (column - x) * (wall - y);
          if (column + pose.width > x + room || lost > left) break;
          if (place(raised(ledges, x, column - x, wall), column, y, choice, pose, left - lost)) return true;
        }
      }
    }
    const level = Math.min(wall, ledges[at + 1]?.y ?? top);
    const lost = room * (level - y);
    return lost <= left && room < right && search(raised(ledges, x, room, level), left - lost);
  };

  const found = search(flat(right), spare + areaSlip(right, top));
  return { ...(found ? { spots } : {}), nodes: Math.min(nodes, maxNodes), cut: nodes > maxNodes };
}

/** Rounding in sums of areas, which may be beyond 2^53. */
export const areaSlip = (width: number, height: number): number => 1e-12 * width * height;
