import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import { boxOf } from './flat-faces.ts';
import { carry, carryDirection, cross, type Motion, minus, type Point3, still, times } from './space.ts';

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

/** The plane of every leaf, by number. */
export function leafPlanes(
  { faces, vertices }: CreasePattern,
  motions: readonly Motion[],
  leaves: readonly number[],
): readonly LeafPlane[] {
  const own = new Map<number, number[]>();
  for (const [face, leaf] of leaves.entries()) own.set(leaf, [...(own.get(leaf) ?? []), face]);
  return [...own].map(([leaf, members]) => {
    const polygons = members.map((face) => {
      const motion = motions[face] ?? still;
      return (faces[face]?.vertices ?? []).flatMap((corner) => {
        const point = vertices[corner];
        return point ? [carry(motion, { ...point, z: 0 })] : [];
      });
    });
    const first = motions[members[0] ?? -1] ?? still;
    const across = carryDirection(first, { x: 1, y: 0, z: 0 });
    const down = carryDirection(first, { x: 0, y: 1, z: 0 });
    const origin = polygons[0]?.[0] ?? { x: 0, y: 0, z: 0 };
    const box = boxOf3(polygons.flat());
    return { leaf, faces: members, normal: cross(across, down), across, down, origin, polygons, ...box };
  });
}

/** How far a point lies from a leaf's plane, positive on the side of its normal. */
export const heightOver = ({ normal, origin }: LeafPlane, point: Point3): number =>
  times(normal, minus(point, origin));

/** A point of space as the plane's own coordinates. */
export const onPlane = ({ across, down, origin }: LeafPlane, point: Point3): Point => {
  const from = minus(point, origin);
  return { x: times(across, from), y: times(down, from) };
};

/** The upright rectangle around a leaf as it is seen square to another, in that one's own coordinates. */
export const groundBox = (ground: LeafPlane, { polygons }: LeafPlane) =>
  boxOf(polygons.flatMap((polygon) => polygon.map((corner) => onPlane(ground, corner))));

/** Directions that differ by less than this, as the sine of their angle, are parallel. */
const SAME_WAY = 1e-9;

export const areParallel = (one: LeafPlane, other: LeafPlane): boolean =>
  Math.abs(Math.abs(times(one.normal, other.normal)) - 1) < SAME_WAY;

function boxOf3(points: readonly Point3[]): { readonly least: Point3; readonly most: Point3 } {
  let [left, top, far] = [Infinity, Infinity, Infinity];
  let [right, bottom, near] = [-Infinity, -Infinity, -Infinity];
  for (const { x, y, z } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
    if (z < far) far = z;
    if (z > near) near = z;
  }
  return { least: { x: left, y: top, z: far }, most: { x: right, y: bottom, z: near } };
}
