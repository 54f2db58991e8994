import type { CreasePattern } from '../creases/crease-pattern.ts';
import { facesAcross } from '../folding/faces-across.ts';

/** For each face, the number of its leaf: a part of the folder that stays flat when the spine bends. */
export function leavesOf(pattern: CreasePattern): readonly number[] {
  const neighbours = facesAcross(pattern);
  const leaves: (number | undefined)[] = pattern.faces.map(() => undefined);
  let count = 0;
  for (const start of pattern.faces.keys()) {
    if (leaves[start] !== undefined) continue;
    const queue = [start];
    leaves[start] = count;
    for (const face of queue) {
      for (const { other, edge } of neighbours[face] ?? []) {
        if (leaves[other] !== undefined || Math.abs(edge.foldAngle) !== 180) continue;
        leaves[other] = count;
        queue.push(other);
      }
    }
    count++;
  }
  return leaves.map((leaf) => leaf ?? -1);
}
