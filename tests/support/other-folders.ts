import FOLD, { type FlatFolded } from 'fold';
import ear, { type EarGraph } from 'rabbit-ear';
import { vi } from 'vitest';
import type { CreasePattern } from '../../shared/creases/crease-pattern.ts';
import { meshOf } from '../../shared/fold-format/mesh.ts';
import type { FlatFace } from '../../shared/folding/flat-faces.ts';

/*
 * Two folding libraries by other authors, rabbit-ear and fold: second opinions on what our folding says. They
 * take FOLD frames, y up.
 */

export type FoldGraph = EarGraph & {
  edges_faces: (number | null)[][];
  faces_edges: number[][];
  faces_vertices: number[][];
};

/** A pattern as FOLD graph in millimetres; y is only negated, so that this shares nothing with our writer's axes. */
export const graphOf = (pattern: CreasePattern): FoldGraph => ({
  ...meshOf(pattern),
  vertices_coords: pattern.vertices.map(({ x, y }) => [x / 1e6, -y / 1e6]),
  edges_assignment: pattern.edges.map(({ letter }) => letter),
  edges_foldAngle: pattern.edges.map(({ foldAngle }) => foldAngle),
});

/** Where rabbit-ear puts the vertices. */
export const verticesByRabbitEar = (graph: EarGraph, root: number): number[][] =>
  ear.graph.makeVerticesCoordsFlatFolded(ear.graph.populate(structuredClone(graph)), root);

/** Where fold puts the vertices; it folds every edge between two faces. */
export function verticesByFold(graph: FoldGraph, root: number): { coords: number[][]; residual: number } {
  const copy: FlatFolded = structuredClone(graph);
  const residual = FOLD.convert.flatFoldedGeometry(copy, root);
  return { coords: copy.vertices_flatFoldCoords ?? [], residual };
}

/** Vertices that break a theorem, in rabbit-ear's opinion. */
export function faultsByRabbitEar(graph: EarGraph): { Kawasaki: number[]; Maekawa: number[] } {
  const populated = ear.graph.populate(structuredClone(graph));
  return {
    Kawasaki: ear.singleVertex.validateKawasaki(populated),
    Maekawa: ear.singleVertex.validateMaekawa(populated),
  };
}

/** Which of two faces is above, by the key of {@link pairKey}: 1 for the first of the pair, -1 for the second. */
export type PairOrders = ReadonlyMap<string, number>;

/** Every way to order the layers that rabbit-ear finds; it has no opinion on Kawasaki. */
export function ordersByRabbitEar(graph: EarGraph, root: number): readonly PairOrders[] {
  // it says on the console where a branch ends and how long it took
  vi.spyOn(console, 'warn').mockImplementation(() => {});
  vi.spyOn(console, 'log').mockImplementation(() => {});
  const populated = ear.graph.populate(structuredClone(graph));
  const folded = ear.graph.makeVerticesCoordsFlatFolded(populated, root);
  const solution = ear.layer.solver({ ...populated, vertices_coords: folded });
  if (!solution || solution.count().includes(0)) return [];
  return solution
    .allFaceOrders()
    .map((orders) => new Map(orders.map(([f, g, s]) => (f < g ? [`${f} ${g}`, s] : [`${g} ${f}`, -s]))));
}

/** What a stack says of the pairs that somebody else has ordered. */
export const pairsIn = (faces: readonly FlatFace[], like: PairOrders): PairOrders =>
  new Map(
    [...like.keys()].map((key) => {
      const [f, g] = key.split(' ').map((face) => faces[Number(face)]?.height ?? Number.NaN);
      return [key, Math.sign((f ?? 0) - (g ?? 0))];
    }),
  );

export const samePairs = (one: PairOrders, other: PairOrders): boolean =>
  one.size === other.size && [...one].every(([key, order]) => other.get(key) === order);
