import { mm } from '../lengths/nanometres.ts';
import { type Contour, isCurve, type Shape, type Stretch } from './contour.ts';
import { coordinateAt } from './cubic.ts';
import type { Point } from './plane.ts';
import { walk } from './walk.ts';

/** How far the chords of a flattened curve may lie from it, unless something else is asked for: 0.01 mm. */
export const CHORD_ERROR = mm(0.01);

/**
 * Into how many parts of equal parameter a stretch is cut so that chords keep within `error` of it: 1 for a line.
 * n = √(¾ · m / error), m the longer of the two second differences of the control points.
 * Source: G. Wang, The subdivision method for finding the intersection between two Bézier curves or surfaces,
 * Zhejiang University Journal, 1984, as restated for degree d: √(d(d − 1)/8 · m / error).
 * @param mostTurn radians that the mean part may turn by; a curve turns no more than its control polygon
 */
export function chordsFor(from: Point, stretch: Stretch, error: number, mostTurn = Infinity): number {
  if (!isCurve(stretch)) return 1;
  const [c, d] = stretch.control;
  const { to } = stretch;
  const first = Math.hypot(from.x - 2 * c.x + d.x, from.y - 2 * c.y + d.y);
  const second = Math.hypot(c.x - 2 * d.x + to.x, c.y - 2 * d.y + to.y);
  const chords = Math.sqrt((0.75 * Math.max(first, second)) / error);
  const turns = mostTurn === Infinity ? 0 : (turnAt(from, c, d) + turnAt(c, d, to)) / mostTurn;
  return Math.max(1, Math.ceil(chords), Math.ceil(turns));
}

/** Radians between the ways into and out of the middle one of three points. */
function turnAt(p: Point, q: Point, r: Point): number {
  const [ux, uy, vx, vy] = [q.x - p.x, q.y - p.y, r.x - q.x, r.y - q.y];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

/**
 * A contour as a polygon whose corners lie on it; the last corner is joined to the first.
 * @param error how far a chord may lie from its curve, in nanometres
 * @param mostTurn as for {@link chordsFor}
 */
export function flatten(contour: Contour, error = CHORD_ERROR, mostTurn = Infinity): Point[] {
  const points: Point[] = [];
  walk(contour, (from, stretch) => {
    points.push(from);
    const chords = chordsFor(from, stretch, error, mostTurn);
    if (chords === 1 || !isCurve(stretch)) return;
    const [c, d] = stretch.control;
    const { to } = stretch;
    for (let i = 1; i < chords; i++) {
      const t = i / chords;
      points.push({
        x: coordinateAt(from.x, c.x, d.x, to.x, t),
        y: coordinateAt(from.y, c.y, d.y, to.y, t),
      });
    }
  });
  return points;
}

/** Each contour of a figure as a polygon. */
export const flattenShape = (shape: Shape, error = CHORD_ERROR): Point[][] =>
  shape.map((contour) => flatten(contour, error));
