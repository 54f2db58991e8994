import type { Point3 } from '../folding/space.ts';

/** A point of the pattern in FOLD's axes, in millimetres; a third number only where it is asked for. */
export type ToFoldAxes = (point: Omit<Point3, 'z'> & Partial<Point3>, dimensions: 2 | 3) => number[];

/**
 * The one boundary between the pattern's axes (nanometres, x right, y down, from the blank's top left corner)
 * and FOLD's (millimetres, x right, y up, from its bottom left corner). FOLD 1.2 wants faces counter-clockwise
 * and takes their normals from that (faces_vertices), which in a plane means y up. Up here is toward the
 * viewer on both sides of the boundary, so z stays; flipping y alone makes the axes right-handed.
 * @param bottom the blank's height in nanometres
 */
export function toFoldAxes(bottom: number): ToFoldAxes {
  return ({ x, y, z = 0 }, dimensions) => {
    const flat = [millimetres(x), millimetres(bottom - y)];
    return dimensions === 2 ? flat : [...flat, millimetres(z)];
  };
}

/** Rounded to whole nanometres, the sixth decimal; never -0. */
const millimetres = (nm: number): number => (Math.round(nm) + 0) / 1e6;
