import type { Folded } from '../folding/proof-of.ts';
import { styleOf } from '../styles/registry.ts';
import { toFoldAxes } from './fold-axes.ts';
import type { FoldDocument } from './fold-document.ts';
import { bends, foldedFrames, sheetAttributes } from './folded-frames.ts';
import { meshOf } from './mesh.ts';

const description =
  'Millimetres from the bottom left corner of the blank: x to the right, y up, z toward the viewer; the inside face of the sheet is up, and face normals point out of it. Frame 0 is the crease pattern, frame 1 the flat form before the spine is bent, frame 2 the closed form, and one frame follows for each step that moves paper.';

const withoutKnockouts =
  'Knockouts are left out: a face of FOLD has no holes, and proofs are of the whole sheet.';

/**
 * A folded plan as FOLD 1.2: the crease pattern as key frame, its folded forms as further frames.
 *
 * Signs, each by its clause of the specification: a valley brings the two faces' normals together and a
 * mountain turns them apart (edges_assignment), and normals point out of the inside face, so the letters are
 * the pattern's own; for axes and winding see {@link toFoldAxes} and `meshOf`, for layers `faceOrders`.
 * Custom members carry their namespace after the prefix that says what they are of (Custom Properties).
 * @param creator name and version of the program, for `file_creator`
 */
export function toFold(folded: Folded, creator: string): FoldDocument {
  const { plan, pattern } = folded;
  const toAxes = toFoldAxes(plan.blank.height);
  const { edges, faces, steps, vertices } = pattern;
  const mesh = meshOf(pattern);
  return {
    file_spec: 1.2,
    file_creator: creator,
    file_title: styleOf(plan.spec).title,
    file_description: folded.knockouts ? `${description} ${withoutKnockouts}` : description,
    file_classes: ['singleModel', 'diagrams'],
    frame_title: 'crease pattern',
    frame_classes: ['creasePattern'],
    frame_attributes: ['2D', 'nonSelfTouching', ...sheetAttributes],
    frame_unit: 'mm',
    vertices_coords: vertices.map((point) => toAxes(point, 2)),
    edges_vertices: mesh.edges_vertices,
    edges_faces: mesh.edges_faces,
    ...bends(edges, ({ foldAngle }) => foldAngle),
    'edges_hemfold:step': edges.map(({ step }) => (step === undefined ? null : (steps[step] ?? null))),
    faces_vertices: mesh.faces_vertices,
    faces_edges: mesh.faces_edges,
    'faces_hemfold:panel': faces.map(({ panel }) => panel),
    file_frames: foldedFrames(folded, toAxes),
  };
}
