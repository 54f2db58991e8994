import type { Paths64 } from 'clipper2-ts';
import type { Contour, Shape } from '../contour.ts';
import { growPaths, type Join, pathsOf } from './grow.ts';
import { refit } from './refit.ts';
import { isPlain } from './units.ts';

/**
 * A figure whose edge lies a distance further out, or further in where it is negative: then parts vanish that are
 * narrower than twice the distance.
 * @param distance in nanometres
 * @param join round, or mitred where corners shall stay corners (below 60° they are cut square)
 * @returns curves within 0.02 mm of the true offset; the figure itself for a distance of 0
 */
export function offset(shape: Shape, distance: number, join: Join = 'round'): Shape {
  if (distance === 0 || shape.length === 0) return shape;
  return shapeOf(growPaths(pathsOf(shape, distance), distance, join));
}

/** Clipped or offset polygons as a figure, without what comes from rounding alone. */
export const shapeOf = (paths: Paths64): Shape =>
  paths
    .filter(isPlain)
    .map(refit)
    .filter((contour): contour is Contour => contour !== undefined);
