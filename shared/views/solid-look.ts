import { locksOf } from '../creases/fold-program.ts';
import type { AngleOf } from '../folding/angles.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { boxOf } from '../folding/flat-faces.ts';
import { foldRigid } from '../folding/fold-rigid.ts';
import { isNearer } from '../folding/glue-bonds.ts';
import { leavesOf } from '../folding/leaves.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Side } from '../folding/regions.ts';
import { carry, type Motion, type Point3, still } from '../folding/space.ts';
import { inverse, move, type Point, turnsOver } from '../geometry/plane.ts';
import { styleOf } from '../styles/registry.ts';
import { contentsIn } from './contents-outline.ts';
import type { Room } from './fit.ts';
import { lieLevel } from './lie-level.ts';
import type { Look } from './painted.ts';
import { paintingOrder } from './painting-order.ts';
import type { PagePoint } from './picture.ts';
import { usualPose, viewerOf } from './viewer.ts';

export interface SolidLook extends Look {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  /** For each face, the number of its leaf. */
  readonly leaves: readonly number[];
}

/**
 * The piece in space, bent by some angles and seen in its style's pose, in parallel projection: leaves are painted from
 * the farthest to the nearest, and each leaf's layers in their own order or, where it is seen from outside, in the
 * opposite one.
 * @param filled whether what the piece holds is to be seen, also where it sticks out
 */
export function posedLook(folded: Folded, angleOf: AngleOf, room: Room, filled = false): SolidLook {
  const { plan, pattern, proof } = folded;
  const { face, pose = usualPose } = styleOf(plan.spec);
  const neighbours = facesAcross(pattern);
  const root = pattern.faces.findIndex(({ panel }) => panel === (pose.root ?? face));
  const { motions } = foldRigid(pattern, neighbours, Math.max(0, root), angleOf);
  const leaves = leavesOf(pattern, neighbours, angleOf, locksOf(folded.program));
  const out = filled ? contentsIn(folded).filter(({ sticksOut }) => sticksOut) : [];
  const also = out.flatMap(({ cover, corners }) =>
    corners.map((corner) =>
      carry(motions[cover.index] ?? still, { ...move(inverse(cover.lies), corner), z: 0 }),
    ),
  );
  return solidLook(
    { pattern, proof },
    motions,
    leaves,
    viewerOf(pose),
    ({ width, height }) => Math.min(room.width / width, room.height / height),
    also,
  );
}

/**
 * @param viewer from space to what the viewer sees
 * @param scaleFor page millimetres for a nanometre, from the size of what is seen
 * @param also points in space that are to be seen besides
 */
export function solidLook(
  { pattern, proof }: Pick<Folded, 'pattern' | 'proof'>,
  motions: readonly Motion[],
  leaves: readonly number[],
  viewer: (point: Point3) => Point3,
  scaleFor: (size: { readonly width: number; readonly height: number }) => number,
  also: readonly Point3[] = [],
): SolidLook {
  const form = proof.forms.at(-1);
  if (!form) throw new Error('a program without steps has no folded form');
  const seen = (face: number, { x, y }: Point): Point3 =>
    viewer(carry(motions[face] ?? still, { x, y, z: 0 }));
  const leans = motions.map((motion) => leanOf(motion, viewer));
  const sides = form.lies.map(
    (lies, face): Side => ((leans[face] ?? 0) > 0 === turnsOver(lies) ? 'outside' : 'inside'),
  );
  const corners = pattern.faces.map(({ vertices }, face) =>
    vertices.flatMap((corner) => pattern.vertices[corner] ?? []).map((corner) => seen(face, corner)),
  );
  const box = boxOf([...corners.flat(), ...also.map(viewer)]);
  const scale = scaleFor({ width: box.right - box.left, height: box.bottom - box.top });
  const nearer = (one: number, other: number): boolean | undefined =>
    isNearer(proof.bonds, one, other, (face) => (leans[face] ?? 0) > 0);
  return {
    leaves,
    ratio: scale * 1e6,
    width: (box.right - box.left) * scale,
    height: (box.bottom - box.top) * scale,
    at: (face, point): PagePoint => {
      const { x, y } = seen(face, point);
      return { x: (x - box.left) * scale, y: (y - box.top) * scale };
    },
    order: paintingOrder(form.order, leaves, sides, corners, nearer).filter(
      (face) => Math.abs(leans[face] ?? 0) > EDGE_ON,
    ),
    sideOf: (face) => sides[face] ?? 'inside',
    level: (one, other) => {
      const [lies, beside] = [form.lies[one], form.lies[other]];
      return leaves[one] === leaves[other] && !!lies && !!beside && lieLevel(lies, beside);
    },
  };
}

/** Faces that lean less than this toward the viewer are seen edge-on. */
const EDGE_ON = 1e-6;

const origin = { x: 0, y: 0, z: 0 };

/** How far the inside face of the paper leans toward the viewer: 1 when it is seen squarely, below 0 from behind. */
function leanOf(motion: Motion, viewer: (point: Point3) => Point3): number {
  const [foot, tip] = [origin, { ...origin, z: 1 }].map((point) => viewer(carry(motion, point)));
  return (tip?.z ?? 0) - (foot?.z ?? 0);
}
