import type { CreasePattern, Edge } from '../creases/crease-pattern.ts';
import { edgeKey } from '../creases/edge-key.ts';

/** A crease as one of its two faces sees it. */
export interface Across {
  readonly other: number;
  readonly edge: Edge;
  /** The edge as this face's corners run, clockwise as seen: the face lies to the right of it. */
  readonly from: number;
  readonly to: number;
}

/** For each face, what lies beyond its creases. */
export type Neighbours = readonly (readonly Across[])[];

/** For each face, the faces beyond its creases. */
export function facesAcross({ edges, faces }: CreasePattern): Neighbours {
  const sides = new Map<number, { face: number; from: number; to: number }[]>();
  for (const [face, { vertices }] of faces.entries()) {
    for (const [index, from] of vertices.entries()) {
      const to = vertices[(index + 1) % vertices.length] ?? from;
      const list = sides.get(edgeKey(from, to));
      if (list) list.push({ face, from, to });
      else sides.set(edgeKey(from, to), [{ face, from, to }]);
    }
  }
  const across: Across[][] = faces.map(() => []);
  for (const edge of edges) {
    const [one, other] = sides.get(edgeKey(...edge.ends)) ?? [];
    if (!one || !other) continue;
    across[one.face]?.push({ other: other.face, edge, from: one.from, to: one.to });
    across[other.face]?.push({ other: one.face, edge, from: other.from, to: other.to });
  }
  return across;
}
