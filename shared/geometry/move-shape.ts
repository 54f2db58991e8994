import type { Contour, Shape } from './contour.ts';
import { type Isometry, move, type Point, turnsOver } from './plane.ts';
import { mapPoints, mapShape, reverse } from './walk.ts';

/** A contour after a motion. One that is turned over is walked the other way, so that outer ones stay clockwise. */
export function moveContour(contour: Contour, by: Isometry): Contour {
  const moved = mapPoints(contour, (p) => move(by, p));
  return turnsOver(by) ? reverse(moved) : moved;
}

/** A figure after a motion; outer contours stay clockwise also where it is turned over. */
export const moveShape = (shape: Shape, by: Isometry): Shape =>
  mapShape(shape, (p) => move(by, p), turnsOver(by));

/**
 * A figure made larger or smaller about the origin.
 * @param across factor along x, not 0; a negative one mirrors
 * @param along factor along y; default: the same
 */
export function scaleShape(shape: Shape, across: number, along = across): Shape {
  if (across === 0 || along === 0) throw new Error('a shape scaled by 0 has no area');
  const change = ({ x, y }: Point): Point => ({ x: x * across, y: y * along });
  return mapShape(shape, change, across * along < 0);
}

/** The motion that only shifts. */
export const shift = (x: number, y: number): Isometry => ({ a: 1, b: 0, c: 0, d: 1, tx: x, ty: y });

/** The turn about the origin by degrees, clockwise as seen (y runs down); exact for whole quarters. */
export function turn(degrees: number): Isometry {
  const quarters = degrees / 90;
  const exact = Number.isInteger(quarters);
  const angle = (degrees * Math.PI) / 180;
  const cos = exact ? ([1, 0, -1, 0][((quarters % 4) + 4) % 4] ?? 1) : Math.cos(angle);
  const sin = exact ? ([0, 1, 0, -1][((quarters % 4) + 4) % 4] ?? 0) : Math.sin(angle);
  return { a: cos, b: sin, c: -sin, d: cos, tx: 0, ty: 0 };
}
