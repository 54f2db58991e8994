import type { Edge } from '../creases/crease-pattern.ts';
import { movesPaper } from '../creases/fold-program.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { flatFaces } from '../folding/flat-faces.ts';
import { foldRigid } from '../folding/fold-rigid.ts';
import type { Folded } from '../folding/proof-of.ts';
import { faceOrders } from './face-orders.ts';
import type { ToFoldAxes } from './fold-axes.ts';
import type { FoldDocument, FoldFrame } from './fold-document.ts';
import { stillFace } from './still-face.ts';

/** What is true of every frame: one sheet without slits, whose faces are convex. */
export const sheetAttributes = [
  'manifold',
  'orientable',
  'nonSelfIntersecting',
  'noCuts',
  'noJoins',
  'convexFaces',
] as const satisfies FoldFrame['frame_attributes'];

/**
 * The letters and angles of edges while only some are folded. FOLD 1.2, edges_assignment: a crease that is
 * there but not folded is F; edges_foldAngle: valleys positive, mountains negative, 0 for F and B.
 */
export function bends(
  edges: readonly Edge[],
  isFolded: (edge: Edge) => boolean,
): Pick<FoldDocument, 'edges_assignment' | 'edges_foldAngle'> {
  return {
    edges_assignment: edges.map((edge) => (edge.letter === 'B' || isFolded(edge) ? edge.letter : 'F')),
    edges_foldAngle: edges.map((edge) => (isFolded(edge) ? edge.foldAngle : 0)),
  };
}

/**
 * The flat form, the closed form, and the form after each step, all with the same face kept in its place. A step
 * that moves no paper, as glue does, has no frame: FOLD has no words for it, and its form is the one before.
 */
export function foldedFrames({ pattern, program, proof }: Folded, toAxes: ToFoldAxes): FoldFrame[] {
  const neighbours = facesAcross(pattern);
  const root = stillFace(pattern, program, proof.forms);

  const frame = (title: string, steps: number, isFolded: (edge: Edge) => boolean): FoldFrame => {
    const form = proof.forms[steps];
    if (!form) throw new Error(`there is no form after ${steps} steps`);
    const flat = pattern.edges.every((edge) => !isFolded(edge) || Math.abs(edge.foldAngle) !== 90);
    const { vertices } = foldRigid(pattern, neighbours, root, (edge) =>
      isFolded(edge) ? edge.foldAngle : 0,
    );
    return {
      frame_title: title,
      frame_classes: ['foldedForm'],
      frame_attributes: [flat ? '2D' : '3D', 'selfTouching', ...sheetAttributes],
      frame_parent: 0,
      frame_inherit: true,
      vertices_coords: vertices.map((point) => toAxes(point, flat ? 2 : 3)),
      ...bends(pattern.edges, isFolded),
      faceOrders: faceOrders(flatFaces(pattern, form)),
    };
  };

  const all = program.steps.length;
  return [
    frame('flat', all, ({ foldAngle }) => Math.abs(foldAngle) === 180),
    frame('closed', all, ({ step }) => step !== undefined),
    ...program.steps.flatMap((each, index) =>
      movesPaper(each)
        ? [frame(each.name, index + 1, ({ step }) => step !== undefined && step <= index)]
        : [],
    ),
  ];
}
