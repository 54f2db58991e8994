import { ClipperOffset, EndType, JoinType, type Paths64 } from 'clipper2-ts';
import type { Shape } from '../contour.ts';
import { flatten } from '../flatten.ts';
import { CLIP_ERROR, UNIT } from './units.ts';

/** What becomes of corners from which an offset line moves away: an arc about the corner, or a corner again. */
export type Join = 'round' | 'mitred';

/** Corners of less than 60° are cut square, at the offset's distance, where joins are mitred. */
const MITRE_LIMIT = 2;

/** Polygons of a figure's contours in clipping units, fit to be offset by up to `distance` nm, other than 0. */
export function pathsOf(shape: Shape, distance: number, error = CLIP_ERROR): Paths64 {
  // chords of an offset curve have a sagitta of (radius + distance) · turn² / 8
  const mostTurn = Math.sqrt((8 * error) / Math.abs(distance));
  return shape.map((contour) =>
    flatten(contour, error, mostTurn).map(({ x, y }) => ({
      x: Math.round(x / UNIT),
      y: Math.round(y / UNIT),
    })),
  );
}

/** Polygons moved outward by a distance in nanometres, inward where it is negative. */
export function growPaths(paths: Paths64, distance: number, join: Join): Paths64 {
  const arcError = Math.min(CLIP_ERROR, Math.abs(distance) / 100) / UNIT;
  const offsetter = new ClipperOffset(MITRE_LIMIT, arcError);
  offsetter.addPaths(paths, join === 'round' ? JoinType.Round : JoinType.Miter, EndType.Polygon);
  const solution: Paths64 = [];
  offsetter.execute(distance / UNIT, solution);
  return solution;
}
