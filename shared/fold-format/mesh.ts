import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldDocument } from './fold-document.ts';

type Mesh = Pick<FoldDocument, 'edges_vertices' | 'edges_faces' | 'faces_vertices' | 'faces_edges'>;

/**
 * What touches what, as FOLD 1.2 lists it.
 *
 * `faces_vertices` runs counter-clockwise as seen with the inside face up, so that every normal points out of
 * the inside face: the pattern's faces run clockwise as seen, hence they are reversed. `faces_edges[f][i]`
 * joins `faces_vertices[f][i]` and the next. `edges_faces` has the face to the left of the edge first, left
 * as seen from its first vertex to its second: a counter-clockwise face lies to the left of its own edges.
 */
export function meshOf({ edges, faces }: CreasePattern): Mesh {
  const edgeBetween = new Map(edges.map(({ ends: [u, v] }, edge) => [`${u} ${v}`, edge]));
  const edgesFaces = edges.map((): [number | null, number | null] => [null, null]);
  const facesVertices = faces.map(({ vertices }) => vertices.toReversed());
  const facesEdges = facesVertices.map((vertices, face) =>
    vertices.map((from, index) => {
      const to = vertices[(index + 1) % vertices.length] ?? from;
      const forward = edgeBetween.get(`${from} ${to}`);
      const edge = forward ?? edgeBetween.get(`${to} ${from}`);
      const sides = edge === undefined ? undefined : edgesFaces[edge];
      if (edge === undefined || !sides) throw new Error(`no edge joins the vertices ${from} and ${to}`);
      sides[forward === undefined ? 1 : 0] = face;
      return edge;
    }),
  );
  return {
    edges_vertices: edges.map(({ ends }): [number, number] => [...ends]),
    edges_faces: edgesFaces,
    faces_vertices: facesVertices,
    faces_edges: facesEdges,
  };
}
