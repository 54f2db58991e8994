import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import { cross, type Motion, minus, type Point3, still, times } from './space.ts';

/** A leaf where it stands when the piece is set up; lengths in nanometres. */
export interface LeafPlane {
  readonly leaf: number;
  readonly faces: readonly number[];
  /** Out of the inside of its first face, of length 1. */
  readonly normal: Point3;
  /** Where the sheet's x and y run on its first face, of length 1; a motion of another face may run against them. */
  readonly across: Point3;
  readonly down: Point3;
  readonly origin: Point3;
  /** Corners of each face, in the order of `faces`. */
  readonly polygons: readonly (readonly Point3[])[];
  readonly least: Point3;
  readonly most: Point3;
}

/**
 * The plane of every leaf, by number.
 * @param where each vertex of the pattern stands
 */
export function leafPlanes(
  { faces }: CreasePattern,
  motions: readonly Motion[],
  where: readonly Point3[],
  leaves: readonly number[],
): readonly LeafPlane[] {
  const own: number[][] = [];
  for (const [face, leaf] of leaves.entries()) {
    const members = own[leaf];
    if (members) members.push(face);
    else own[leaf] = [face];
  }
  return own.map((members, leaf) => {
    const polygons = members.map((face) =>
      (faces[face]?.vertices ?? []).map((vertex) => where[vertex] ?? nowhere),
    );
    const first = motions[members[0] ?? -1] ?? still;
    const across = { x: first.xx, y: first.yx, z: first.zx };
    const down = { x: first.xy, y: first.yy, z: first.zy };
    const origin = polygons[0]?.[0] ?? nowhere;
    const box = boxOf3(polygons);
    return { leaf, faces: members, normal: cross(across, down), across, down, origin, polygons, ...box };
  });
}

const nowhere: Point3 = { x: 0, y: 0, z: 0 };

/** How far a point lies from a leaf's plane, positive on the side of its normal. */
export const heightOver = ({ normal, origin }: LeafPlane, point: Point3): number =>
  times(normal, minus(point, origin));

/** A point of space as the plane's own coordinates. */
export const onPlane = ({ across, down, origin }: LeafPlane, point: Point3): Point => {
  const from = minus(point, origin);
  return { x: times(across, from), y: times(down, from) };
};

/** The upright rectangle around a leaf as it is seen square to another, in that one's own coordinates. */
export function groundBox({ across, down, origin }: LeafPlane, { polygons }: LeafPlane) {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const polygon of polygons) {
    for (const { x, y, z } of polygon) {
      const [u, v, w] = [x - origin.x, y - origin.y, z - origin.z];
      const to = across.x * u + across.y * v + across.z * w;
      const under = down.x * u + down.y * v + down.z * w;
      if (to < left) left = to;
      if (to > right) right = to;
      if (under < top) top = under;
      if (under > bottom) bottom = under;
    }
  }
  return { left, right, top, bottom };
}

/** Directions that differ by less than this, as the sine of their angle, are parallel. */
const SAME_WAY = 1e-9;

export const areParallel = (one: LeafPlane, other: LeafPlane): boolean =>
  Math.abs(Math.abs(times(one.normal, other.normal)) - 1) < SAME_WAY;

function boxOf3(polygons: readonly (readonly Point3[])[]): {
  readonly least: Point3;
  readonly most: Point3;
} {
  let [left, top, far] = [Infinity, Infinity, Infinity];
  let [right, bottom, near] = [-Infinity, -Infinity, -Infinity];
  for (const polygon of polygons) {
    for (const { x, y, z } of polygon) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
      if (z < far) far = z;
      if (z > near) near = z;
    }
  }
  return { least: { x: left, y: top, z: far }, most: { x: right, y: bottom, z: near } };
}
