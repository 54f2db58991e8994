import type { Point } from './plane.ts';

/** The corners of an upright rectangle around (0, 0), clockwise as seen from the top left one. */
export function rectangleAt(width: number, height: number): Point[] {
  const [x, y] = [width / 2, height / 2];
  return [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
}
