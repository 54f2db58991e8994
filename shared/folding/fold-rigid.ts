import type { CreasePattern, Edge } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import { after, carry, hinge, type Motion, type Point3, still } from './space.ts';

/** A crease pattern folded along its creases as stiff faces. */
export interface RigidForm {
  /** Where each face went. */
  readonly motions: readonly Motion[];
  /** Where each vertex went, by the first face that has it. */
  readonly vertices: readonly Point3[];
  /** The largest distance, in nanometres, between two faces' ideas of where a shared vertex went. */
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
  const queue = [root];
  for (const face of queue) {
    for (const { other, edge, from, to } of neighbours[face] ?? []) {
      if (motions[other]) continue;
      const [p, q] = [vertices[from], vertices[to]];
      if (!p || !q) continue;
      motions[other] = after(motions[face] ?? still, hinge(p, q, -angleOf(edge)));
      queue.push(other);
    }
  }
  const faults = motions.flatMap((motion, face) =>
    motion ? [] : [`face ${face} (${faces[face]?.panel}) hangs on no other`],
  );
  return { motions: motions.map((motion) => motion ?? still), faults, ...meet(pattern, motions) };
}

const flat = ({ x, y }: Point): Point3 => ({ x, y, z: 0 });

function meet({ vertices, faces }: CreasePattern, motions: readonly (Motion | undefined)[]) {
  const where: (Point3 | undefined)[] = vertices.map(() => undefined);
  let residual = 0;
  for (const [index, face] of faces.entries()) {
    const motion = motions[index];
    if (!motion) continue;
    for (const vertex of face.vertices) {
      const point = vertices[vertex];
      if (!point) continue;
      const went = carry(motion, flat(point));
      const known = where[vertex];
      if (known)
        residual = Math.max(residual, Math.hypot(went.x - known.x, went.y - known.y, went.z - known.z));
      else where[vertex] = went;
    }
  }
  return { vertices: where.map((point) => point ?? { x: 0, y: 0, z: 0 }), residual };
}
