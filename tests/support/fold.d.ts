/** The one function of fold 0.12 that the tests call; the package has no types of its own. */
declare module 'fold' {
  export interface FlatFolded {
    vertices_coords: number[][];
    edges_vertices: number[][];
    edges_faces: (number | null)[][];
    faces_edges: number[][];
    vertices_flatFoldCoords?: number[][];
  }

  const FOLD: {
    readonly convert: {
      /** Folds every edge between two faces flat, in place; returns the largest disagreement. */
      flatFoldedGeometry(fold: FlatFolded, rootFace: number): number;
    };
  };
  export default FOLD;
}
