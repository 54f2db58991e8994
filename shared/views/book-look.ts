import type { CreasePattern } from '../creases/crease-pattern.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { boxOf } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import { foldRigid } from '../folding/fold-rigid.ts';
import type { Side } from '../folding/regions.ts';
import { carry, type Motion, type Point3, still } from '../folding/space.ts';
import { type Point, turnsOver } from '../geometry/plane.ts';
import type { Room } from './fit.ts';
import { leavesOf, middleFace } from './leaves.ts';
import { lieLevel } from './lie-level.ts';
import type { Look } from './painted.ts';
import type { PagePoint } from './picture.ts';
import { toViewer } from './viewer.ts';

/** Degrees by which each spine crease is bent: the covers stand open by what is left of 180. */
const bent = 55;

export interface BookLook extends Look {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  /** For each face, the number of its leaf. */
  readonly leaves: readonly number[];
}

/**
 * The folder as a book that stands half open, in parallel projection: leaves are painted from the farthest to the
 * nearest, and each leaf's layers in their own order or, where it is seen from outside, in the opposite one.
 */
export function bookLook(pattern: CreasePattern, form: FlatForm, room: Room): BookLook {
  const leaves = leavesOf(pattern);
  const { motions } = foldRigid(
    pattern,
    facesAcross(pattern),
    middleFace(pattern, form, leaves),
    ({ foldAngle }) => (Math.abs(foldAngle) === 180 ? foldAngle : Math.sign(foldAngle) * bent),
  );
  const seen = (face: number, { x, y }: Point): Point3 =>
    toViewer(carry(motions[face] ?? still, { x, y, z: 0 }));
  const sides = form.lies.map((lies, face) => sideSeen(motions[face] ?? still, turnsOver(lies)));
  const corners = pattern.faces.map(({ vertices }, face) =>
    vertices.flatMap((corner) => pattern.vertices[corner] ?? []).map((corner) => seen(face, corner)),
  );
  const box = boxOf(corners.flat());
  const scale = Math.min(room.width / (box.right - box.left), room.height / (box.bottom - box.top));
  return {
    leaves,
    ratio: scale * 1e6,
    width: (box.right - box.left) * scale,
    height: (box.bottom - box.top) * scale,
    at: (face, point): PagePoint => {
      const { x, y } = seen(face, point);
      return { x: (x - box.left) * scale, y: (y - box.top) * scale };
    },
    order: paintingOrder(form.order, leaves, sides, corners),
    sideOf: (face) => sides[face] ?? 'inside',
    level: (one, other) => {
      const [lies, beside] = [form.lies[one], form.lies[other]];
      return leaves[one] === leaves[other] && !!lies && !!beside && lieLevel(lies, beside);
    },
  };
}

const origin = { x: 0, y: 0, z: 0 };

/** Whether the viewer sees a face's leaf from where the pockets are: from there the inside face of what is not turned. */
function sideSeen(motion: Motion, turnedOver: boolean): Side {
  const [foot, tip] = [origin, { ...origin, z: 1 }].map((point) => toViewer(carry(motion, point)));
  const towardViewer = (tip?.z ?? 0) > (foot?.z ?? 0);
  return towardViewer === turnedOver ? 'outside' : 'inside';
}

function paintingOrder(
  order: readonly number[],
  leaves: readonly number[],
  sides: readonly Side[],
  corners: readonly (readonly Point3[])[],
): readonly number[] {
  const depthOf = (leaf: number): number => {
    const points = corners.filter((_, face) => leaves[face] === leaf).flat();
    return points.reduce((sum, { z }) => sum + z, 0) / points.length;
  };
  const farthestFirst = [...new Set(leaves)]
    .map((leaf) => ({ leaf, depth: depthOf(leaf) }))
    .toSorted((one, other) => one.depth - other.depth);
  return farthestFirst.flatMap(({ leaf }) => {
    const own = order.filter((face) => leaves[face] === leaf);
    return own.some((face) => sides[face] === 'outside') ? own.toReversed() : own;
  });
}
