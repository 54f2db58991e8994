import type { CreasePattern } from '../creases/crease-pattern.ts';
import { facesAcross } from '../folding/faces-across.ts';
import { boxOf } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import { foldRigid } from '../folding/fold-rigid.ts';
import type { Side } from '../folding/regions.ts';
import { carry, type Motion, type Point3 } from '../folding/space.ts';
import { type Point, turnsOver } from '../geometry/plane.ts';
import type { Room } from './fit.ts';
import { leavesOf } from './leaves.ts';
import type { Look } from './painted.ts';
import type { PagePoint } from './picture.ts';

/** Degrees by which each spine crease is bent: the covers stand open by what is left of 180. */
const bent = 55;
/** Degrees by which the standing book is turned to the right, so that the front cover is seen from outside. */
const turned = 62;
/** Degrees from which one looks down. */
const above = 24;

const inRadians = (degrees: number): number => (degrees * Math.PI) / 180;
const [sinTurned, cosTurned] = [Math.sin(inRadians(turned)), Math.cos(inRadians(turned))];
const [sinAbove, cosAbove] = [Math.sin(inRadians(above)), Math.cos(inRadians(above))];

/** Turns the book as it stands, then tips it toward the viewer; z runs to the viewer. */
function toViewer({ x, y, z }: Point3): Point3 {
  const [across, near] = [x * cosTurned + z * sinTurned, z * cosTurned - x * sinTurned];
  return { x: across, y: y * cosAbove + near * sinAbove, z: near * cosAbove - y * sinAbove };
}

export interface BookLook extends Look {
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
  const rigid = foldRigid(
    pattern,
    facesAcross(pattern),
    middleFace(pattern, form, leaves),
    ({ foldAngle }) => (Math.abs(foldAngle) === 180 ? foldAngle : Math.sign(foldAngle) * bent),
  );
  const seen = (face: number, { x, y }: Point): Point3 =>
    toViewer(carry(rigid.motions[face] ?? [], { x, y, z: 0 }));
  const sides = pattern.faces.map((_, face) =>
    sideSeen(rigid.motions[face] ?? [], form.lies[face] !== undefined && turnsOver(form.lies[face])),
  );
  const corners = pattern.faces.flatMap(({ vertices }, face) =>
    vertices.flatMap((corner) => (pattern.vertices[corner] ? [seen(face, pattern.vertices[corner])] : [])),
  );
  const box = boxOf(corners);
  const scale = Math.min(room.width / (box.right - box.left), room.height / (box.bottom - box.top));
  const at = (face: number, point: Point): PagePoint => {
    const { x, y } = seen(face, point);
    return { x: (x - box.left) * scale, y: (y - box.top) * scale };
  };
  return {
    at,
    leaves,
    ratio: scale * 1e6,
    width: (box.right - box.left) * scale,
    height: (box.bottom - box.top) * scale,
    order: orderOf(pattern, form, leaves, sides, seen),
    sideOf: (face) => sides[face] ?? 'inside',
    level: (one, other) => leaves[one] === leaves[other] && sameDirection(rigid.motions, one, other),
  };
}

/** A face that never moves, in the leaf that most spine creases bound. */
function middleFace(pattern: CreasePattern, { lies }: FlatForm, leaves: readonly number[]): number {
  const neighbours = facesAcross(pattern);
  const beside = new Map<number, Set<number>>();
  for (const [face, leaf] of leaves.entries()) {
    const set = beside.get(leaf) ?? new Set<number>();
    for (const { other } of neighbours[face] ?? []) set.add(leaves[other] ?? leaf);
    beside.set(leaf, set);
  }
  const middle = [...beside].toSorted((one, other) => other[1].size - one[1].size)[0]?.[0];
  const still = lies.findIndex(
    (motion, face) =>
      leaves[face] === middle && motion.a === 1 && motion.d === 1 && motion.tx === 0 && motion.ty === 0,
  );
  return Math.max(0, still);
}

/** Whether the viewer sees the side of a leaf where its pockets are. */
function sideSeen(motion: Motion, turnedOver: boolean): Side {
  const normal = toViewer({ x: motion[2] ?? 0, y: motion[6] ?? 0, z: motion[10] ?? 0 });
  return normal.z > 0 === turnedOver ? 'outside' : 'inside';
}

function orderOf(
  { faces, vertices }: CreasePattern,
  { order }: FlatForm,
  leaves: readonly number[],
  sides: readonly Side[],
  seen: (face: number, point: Point) => Point3,
): readonly number[] {
  const depths = new Map<number, { sum: number; count: number }>();
  for (const [face, { vertices: corners }] of faces.entries()) {
    const leaf = leaves[face] ?? -1;
    const depth = depths.get(leaf) ?? { sum: 0, count: 0 };
    for (const corner of corners) {
      const point = vertices[corner];
      if (!point) continue;
      depth.sum += seen(face, point).z;
      depth.count++;
    }
    depths.set(leaf, depth);
  }
  const farthestFirst = [...depths]
    .map(([leaf, { sum, count }]) => ({ leaf, depth: sum / count }))
    .toSorted((one, other) => one.depth - other.depth);
  return farthestFirst.flatMap(({ leaf }) => {
    const own = order.filter((face) => leaves[face] === leaf);
    return own.some((face) => sides[face] === 'outside') ? own.toReversed() : own;
  });
}

function sameDirection(motions: readonly Motion[], one: number, other: number): boolean {
  const [m, n] = [motions[one] ?? [], motions[other] ?? []];
  return [0, 1, 2, 4, 5, 6, 8, 9, 10].every((index) => Math.abs((m[index] ?? 0) - (n[index] ?? 0)) < 1e-6);
}
