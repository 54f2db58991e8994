import type { CreasePattern } from '../creases/crease-pattern.ts';
import { facesAcross } from '../folding/faces-across.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import { identity } from '../geometry/plane.ts';
import { lieLevel } from './lie-level.ts';

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

/** A face that no fold moved, in the leaf with the most others beside it: the spine's. */
export function middleFace(pattern: CreasePattern, { lies }: FlatForm, leaves: readonly number[]): number {
  const beside = new Map<number, Set<number>>();
  for (const [face, across] of facesAcross(pattern).entries()) {
    const leaf = leaves[face] ?? -1;
    const others = beside.get(leaf) ?? new Set<number>();
    beside.set(leaf, others);
    for (const { other } of across) others.add(leaves[other] ?? -1);
  }
  const middle = [...beside].toSorted((one, other) => other[1].size - one[1].size)[0]?.[0];
  return Math.max(
    0,
    lies.findIndex((motion, face) => leaves[face] === middle && lieLevel(motion, identity)),
  );
}
