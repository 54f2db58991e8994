import { Clipper, FillRule, type Path64, type Paths64, PointInPolygonResult, type Rect64 } from 'clipper2-ts';
import type { Contour, Shape } from '../contour.ts';
import { CHORD_ERROR } from '../flatten.ts';
import { polygon } from '../walk.ts';
import { growPaths, pathsOf } from './grow.ts';
import { shapeOf } from './offset.ts';
import { UNIT } from './units.ts';

/**
 * Morphological opening: what a square-edged tool of a width can sweep without leaving the figure. Source: G. Matheron,
 * Random Sets and Integral Geometry, 1975; with mitred joins, so that corners down to 60° are not lost.
 */
export const opening = (shape: Shape, width: number): Shape =>
  shapeOf(opened(pathsOf(shape, width / 2), width));

/** How a thin part hangs on what is wide enough: on two sides or more, on one, or on nothing. */
export type Thinness = 'neck' | 'tip' | 'whole';

/** A part that is too thin. */
export interface ThinPart {
  /** A polygon, perhaps with counters, within 0.03 mm of the part. */
  readonly outline: Shape;
  readonly kind: Thinness;
}

/** Thin parts that are less deep or wide than this, 0.04 mm, are left out: nobody could see them, and curves are polygons here. */
const UNSEEN = 40_000;

/** How far a thin part may be from what it hangs on, for rounding, in nanometres. */
const TOUCH = 20_000;

/**
 * The parts of a figure that are narrower than a width: what opening loses. Corners of less than 60° end in a tip.
 * @param width in nanometres, greater than 0
 */
export function thinParts(shape: Shape, width: number): ThinPart[] {
  if (shape.length === 0) return [];
  const paths = pathsOf(shape, width / 2, CHORD_ERROR);
  const kept = opened(paths, width);
  const lost = opened(Clipper.difference(paths, kept, FillRule.NonZero), UNSEEN);
  const boxed = kept.map((path) => ({ path, box: Clipper.getBounds(path) }));
  return piecesOf(lost).map((piece) => {
    const around = Clipper.getBoundsPaths(piece);
    // what lies elsewhere takes no part in what a piece hangs on
    const near = boxed.filter(({ box }) => comeNear(box, around)).map(({ path }) => path);
    return { outline: piece.map(outlineOf), kind: kindOf(piece, near) };
  });
}

/** Mitred corners may reach beyond round ones, so what was grown is cut back to what was there. */
function opened(paths: Paths64, width: number): Paths64 {
  const core = growPaths(paths, -width / 2, 'mitred');
  if (core.length === 0) return [];
  return Clipper.intersect(growPaths(core, width / 2, 'mitred'), paths, FillRule.NonZero);
}

/** Each outer polygon with its counters. */
function piecesOf(paths: Paths64): Paths64[] {
  const outers = paths.filter((path) => Clipper.area(path) > 0);
  const counters = paths.filter((path) => Clipper.area(path) <= 0);
  return outers.map((outer) => [outer, ...counters.filter((counter) => liesIn(counter, outer))]);
}

/** Counters cross no outer polygon, so that any corner that lies on none decides. */
function liesIn(counter: Path64, outer: Path64): boolean {
  for (const corner of counter) {
    const where = Clipper.pointInPolygon(corner, outer);
    if (where !== PointInPolygonResult.IsOn) return where === PointInPolygonResult.IsInside;
  }
  return false;
}

const comeNear = (one: Rect64, other: Rect64): boolean =>
  one.left <= other.right + TOUCH &&
  other.left <= one.right + TOUCH &&
  one.top <= other.bottom + TOUCH &&
  other.top <= one.bottom + TOUCH;

function kindOf(piece: Paths64, kept: Paths64): Thinness {
  const contacts = Clipper.intersect(growPaths(piece, TOUCH, 'mitred'), kept, FillRule.NonZero);
  const count = contacts.filter((path) => Clipper.area(path) > 0).length;
  return count === 0 ? 'whole' : count === 1 ? 'tip' : 'neck';
}

const outlineOf = (path: Path64): Contour => polygon(path.map(({ x, y }) => ({ x: x * UNIT, y: y * UNIT })));
