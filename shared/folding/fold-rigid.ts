import type { CreasePattern, Edge } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import type { Across, Neighbours } from './faces-across.ts';
import { after, carry, hinge, type Motion, type Point3, still } from './space.ts';

/** A crease pattern folded along its creases as stiff faces. */
export interface RigidForm {
  /** Where each face went. */
  readonly motions: readonly Motion[];
  /** Where each vertex went, by the first face that has it. */
  readonly vertices: readonly Point3[];
  /**
   * The largest distance, in nanometres, between where a face is and where a crease wants it, over every crease:
   * also those that the walk from face to face did not go through.
   */
  readonly residual: number;
  /** What is wrong with the graph itself, apart from distances. */
  readonly faults: readonly string[];
}

/**
 * Folds every crease by its angle, from the letters of the graph alone: nothing is known of fold order. The
 * face that holds the root stays.
 * @param neighbours from {@link facesAcross}
 * @param root index of a face
 * @param angleOf degrees for an edge; default its fold angle
 */
export function foldRigid(
  pattern: CreasePattern,
  neighbours: Neighbours,
  root: number,
  angleOf: (edge: Edge) => number = (edge) => edge.foldAngle,
): RigidForm {
  const { vertices, faces } = pattern;
  const motions: (Motion | undefined)[] = faces.map((_, index) => (index === root ? still : undefined));
  /** Where the face beyond a crease must be, given where this face is. */
  const beyond = (motion: Motion, { edge, from, to }: Across): Motion => {
    const [p, q] = [vertices[from], vertices[to]];
    if (!p || !q) throw new Error(`vertex ${from} or ${to} is missing`);
    return after(motion, hinge(p, q, -angleOf(edge)));
  };
  const queue = [root];
  for (const face of queue) {
    for (const across of neighbours[face] ?? []) {
      if (motions[across.other]) continue;
      motions[across.other] = beyond(motions[face] ?? still, across);
      queue.push(across.other);
    }
  }
  const faults = motions.flatMap((motion, face) =>
    motion ? [] : [`face ${face} (${faces[face]?.panel}) hangs on no other`],
  );
  const found = motions.map((motion) => motion ?? still);
  let residual = 0;
  for (const [face, across] of neighbours.entries()) {
    for (const each of across) {
      // a crease is met from both of its faces; once is enough
      if (each.other < face) continue;
      const wanted = beyond(found[face] ?? still, each);
      residual = Math.max(residual, apart(pattern, each.other, wanted, found[each.other]));
    }
  }
  return { motions: found, faults, residual, vertices: whereVerticesGo(pattern, found) };
}

/** The largest distance between where two motions take the corners of a face. */
function apart({ vertices, faces }: CreasePattern, face: number, one: Motion, other: Motion = still): number {
  let most = 0;
  for (const corner of faces[face]?.vertices ?? []) {
    const point = flat(vertices[corner] ?? { x: 0, y: 0 });
    const [a, b] = [carry(one, point), carry(other, point)];
    most = Math.max(most, Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z));
  }
  return most;
}

const flat = ({ x, y }: Point): Point3 => ({ x, y, z: 0 });

function whereVerticesGo({ vertices, faces }: CreasePattern, motions: readonly Motion[]): readonly Point3[] {
  const where: (Point3 | undefined)[] = vertices.map(() => undefined);
  for (const [index, { vertices: corners }] of faces.entries()) {
    for (const corner of corners) {
      where[corner] ??= carry(motions[index] ?? still, flat(vertices[corner] ?? { x: 0, y: 0 }));
    }
  }
  return where.map((point) => point ?? { x: 0, y: 0, z: 0 });
}
