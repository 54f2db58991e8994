/** The few functions of rabbit-ear 0.9.32 that the tests call; the package has no types of its own. */
declare module 'rabbit-ear' {
  /** A FOLD frame; rabbit-ear adds members that it needs. */
  export interface EarGraph {
    vertices_coords: number[][];
    edges_vertices: number[][];
    edges_assignment: string[];
    edges_foldAngle?: number[];
    faces_vertices?: number[][];
    faces_edges?: number[][];
    faces_faces?: (number | null)[][];
  }

  /** Every way to order the layers; it has branches whose choices do not depend on each other. */
  export interface LayerOrders {
    count(): number[];
    /** Per way: [f, g, s], f above g where s is 1 and below where it is -1, seen with y up. */
    allFaceOrders(): [number, number, number][][];
  }

  const ear: {
    readonly graph: {
      /** Adds in place what is missing of a planar graph. */
      populate(graph: EarGraph): EarGraph;
      makeVerticesCoordsFlatFolded(graph: EarGraph, rootFace: number): number[][];
    };
    readonly singleVertex: {
      /** Vertices that fail; those on the border are not looked at. */
      validateKawasaki(graph: EarGraph, epsilon?: number): number[];
      validateMaekawa(graph: EarGraph): number[];
    };
    readonly layer: {
      /** @param graph with folded coordinates; undefined when there is no order; a count of 0 says so too */
      solver(graph: EarGraph, epsilon?: number): LayerOrders | undefined;
    };
  };
  export default ear;
}
