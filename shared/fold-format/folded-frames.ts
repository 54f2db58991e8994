import { closedAngleOf, type Edge } from '../creases/crease-pattern.ts';
import { locksOf, movesPaper } from '../creases/fold-program.ts';
import { type AngleOf, anglesAfter } from '../folding/angles.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { flatFaces } from '../folding/flat-faces.ts';
import { foldRigid } from '../folding/fold-rigid.ts';
import { isNearer } from '../folding/glue-bonds.ts';
import { leavesOf } from '../folding/leaves.ts';
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
  angleOf: AngleOf,
): Pick<FoldDocument, 'edges_assignment' | 'edges_foldAngle'> {
  return {
    edges_assignment: edges.map((edge) => (edge.letter === 'B' || angleOf(edge) !== 0 ? edge.letter : 'F')),
    edges_foldAngle: edges.map(angleOf),
  };
}

/**
 * The flat form, the closed form, and the form after each step, all with the same face kept in its place. A step
 * that moves no paper, as glue does, has no frame: FOLD has no words for it, and its form is the one before.
 */
export function foldedFrames({ pattern, program, proof }: Folded, toAxes: ToFoldAxes): FoldFrame[] {
  const neighbours = facesAcross(pattern);
  const root = stillFace(pattern, program, proof.forms);

  const frame = (title: string, steps: number, angleOf: AngleOf): FoldFrame => {
    const form = proof.forms[steps];
    if (!form) throw new Error(`there is no form after ${steps} steps`);
    const flat = pattern.edges.every((edge) => Math.abs(angleOf(edge)) !== 90);
    const { vertices } = foldRigid(pattern, neighbours, root, angleOf);
    const leaves = leavesOf(pattern, neighbours, angleOf, locksOf(program));
    const isTogether = (one: number, other: number) =>
      leaves[one] === leaves[other] || isNearer(proof.bonds, one, other, () => true) !== undefined;
    return {
      frame_title: title,
      frame_classes: ['foldedForm'],
      frame_attributes: [flat ? '2D' : '3D', 'selfTouching', ...sheetAttributes],
      frame_parent: 0,
      frame_inherit: true,
      vertices_coords: vertices.map((point) => toAxes(point, flat ? 2 : 3)),
      ...bends(pattern.edges, angleOf),
      // layers that were set up apart from each other overlap no more
      faceOrders: faceOrders(flatFaces(pattern, form)).filter(([one, other]) => isTogether(one, other)),
    };
  };

  const all = program.steps.length;
  return [
    frame('flat', all, ({ foldAngle }) => (Math.abs(foldAngle) === 180 ? foldAngle : 0)),
    frame('closed', all, closedAngleOf),
    ...program.steps.flatMap((each, index) =>
      movesPaper(each) ? [frame(each.name, index + 1, anglesAfter(program, index + 1))] : [],
    ),
  ];
}
