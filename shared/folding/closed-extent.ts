import type { LeafPlane } from './leaf-planes.ts';
import type { Point3 } from './space.ts';

/**
 * How large the finished form is, seen square to one of its leaves, in nanometres.
 * @param where each vertex stands
 */
export function closedExtent(
  { across, down, normal }: LeafPlane,
  where: readonly Point3[],
): { readonly width: number; readonly height: number; readonly depth: number } {
  const [width, height, depth] = [across, down, normal].map((direction) => {
    let [least, most] = [Infinity, -Infinity];
    for (const { x, y, z } of where) {
      const value = direction.x * x + direction.y * y + direction.z * z;
      if (value < least) least = value;
      if (value > most) most = value;
    }
    return most - least;
  });
  return { width: width ?? 0, height: height ?? 0, depth: depth ?? 0 };
}
