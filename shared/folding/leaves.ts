import { type CreasePattern, closedAngleOf, type Edge } from '../creases/crease-pattern.ts';
import type { Lock } from '../creases/lock.ts';
import { facesAcross, type Neighbours } from './faces-across.ts';

/**
 * For each face, the number of its leaf: a part of the piece that stays flat when it is set up, whose faces lie in one
 * plane.
 * @param angleOf degrees for an edge; default those of the finished form
 * @param locks a tongue is a leaf of its own where it goes through another leaf than its tab's: it lies on the other side
 */
export function leavesOf(
  pattern: CreasePattern,
  neighbours: Neighbours = facesAcross(pattern),
  angleOf: (edge: Edge) => number = closedAngleOf,
  locks: readonly Lock[] = [],
): readonly number[] {
  const leaves: (number | undefined)[] = pattern.faces.map(() => undefined);
  let count = 0;
  for (const start of pattern.faces.keys()) {
    if (leaves[start] !== undefined) continue;
    const queue = [start];
    leaves[start] = count;
    for (const face of queue) {
      for (const { other, edge } of neighbours[face] ?? []) {
        if (leaves[other] !== undefined || angleOf(edge) % 180 !== 0) continue;
        leaves[other] = count;
        queue.push(other);
      }
    }
    count++;
  }
  const leafOf = (panel: string) => leaves[pattern.faces.findIndex((face) => face.panel === panel)];
  for (const { panel, tongue, to } of locks) {
    if (leafOf(panel) === leafOf(to)) continue;
    for (const [index, face] of pattern.faces.entries()) if (face.panel === tongue) leaves[index] = count;
    count++;
  }
  return leaves.map((leaf) => leaf ?? -1);
}
