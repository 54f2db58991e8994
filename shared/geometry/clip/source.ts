import type { Path64, Paths64, Point64 } from 'clipper2-ts';
import { type Contour, isCurve, type Stretch } from '../contour.ts';
import { coordinateAt } from '../cubic.ts';
import { chordsFor } from '../flatten.ts';
import type { Point } from '../plane.ts';
import { walk } from '../walk.ts';
import { CLIP_ERROR, NEAR, UNIT } from './units.ts';

/**
 * Contours as polygons in clipping units that remember where each corner comes from. Corner `i` has `z` = i + 1;
 * side `i` leads from it to the next corner of its polygon, along one stretch from `start[i]` to `end[i]`.
 */
export interface Source {
  readonly contours: readonly Contour[];
  /** One a contour, in the same order; empty where rounding leaves nothing of it. */
  readonly paths: Paths64;
  readonly corners: readonly Corner[];
}

/** A corner of a polygon and the side that leaves it. */
export interface Corner {
  readonly at: Point64;
  readonly contour: number;
  /** Where the stretch of the side begins, exactly. */
  readonly from: Point;
  readonly stretch: Stretch;
  /** The part of the stretch along which the side runs, as its parameter from 0 to 1. */
  readonly start: number;
  end: number;
  next: number;
  before: number;
}

/** Polygons of contours, each chord within {@link CLIP_ERROR} of its curve. */
export function sourceOf(contours: readonly Contour[]): Source {
  const corners: Corner[] = [];
  const paths: Paths64 = [];
  for (const [index, contour] of contours.entries()) {
    const first = corners.length;
    const path = addContour(contour, index, corners);
    const same = sameLine(path, paths);
    if (same) corners.length = first;
    paths.push(same ?? path);
  }
  return { contours, paths, corners };
}

function addContour(contour: Contour, index: number, corners: Corner[]): Path64 {
  const first = corners.length;
  const add = (x: number, y: number, from: Point, stretch: Stretch, start: number): void => {
    const at = { x: Math.round(x / UNIT), y: Math.round(y / UNIT), z: 0 };
    const last = corners.length > first ? corners.at(-1) : undefined;
    if (last && last.at.x === at.x && last.at.y === at.y) {
      if (last.stretch === stretch) return;
      corners.pop();
    }
    at.z = corners.length + 1;
    corners.push({ at, contour: index, from, stretch, start, end: 1, next: 0, before: 0 });
  };
  walk(contour, (from, stretch) => {
    add(from.x, from.y, from, stretch, 0);
    if (!isCurve(stretch)) return;
    const chords = chordsFor(from, stretch, CLIP_ERROR);
    const [c, d] = stretch.control;
    const { to } = stretch;
    for (let i = 1; i < chords; i++) {
      const t = i / chords;
      const x = coordinateAt(from.x, c.x, d.x, to.x, t);
      add(x, coordinateAt(from.y, c.y, d.y, to.y, t), from, stretch, t);
    }
  });
  return close(corners, first);
}

/** Joins the corners from `first` on to a ring; a ring of fewer than three is taken away. */
function close(corners: Corner[], first: number): Path64 {
  const start = corners[first];
  while (start && corners.length > first + 1 && isAt(corners.at(-1), start.at)) corners.pop();
  if (corners.length < first + 3) corners.length = first;
  const path: Path64 = [];
  for (let i = first; i < corners.length; i++) {
    const corner = corners[i];
    if (!corner) continue;
    corner.next = i + 1 < corners.length ? i + 1 : first;
    corner.before = i > first ? i - 1 : corners.length - 1;
    const next = corners[corner.next];
    if (next && next.stretch === corner.stretch && next.start > corner.start) corner.end = next.start;
    path.push(corner.at);
  }
  return path;
}

const isAt = (corner: Corner | undefined, at: Point64): boolean =>
  corner !== undefined && corner.at.x === at.x && corner.at.y === at.y;

/**
 * Of paths, one that runs along the same line up to rounding, turned the way of the given one. Two that almost lie
 * on each other would cross at every other corner.
 */
function sameLine(path: Path64, among: Paths64): Path64 | undefined {
  for (const other of among) {
    const way = wayAlong(path, other, NEAR);
    if (way) return way === 'same' ? other : other.toReversed();
  }
  return undefined;
}

/** Which way a closed path runs along another with the same corners, each within `slack` units; nothing where they differ. */
export function wayAlong(path: Path64, other: Path64, slack: number): 'same' | 'reversed' | undefined {
  const [start] = path;
  if (!start || other.length !== path.length) return undefined;
  const isNear = (p: Point64, q: Point64 | undefined): boolean =>
    q !== undefined && Math.abs(p.x - q.x) <= slack && Math.abs(p.y - q.y) <= slack;
  const at = other.findIndex((p) => isNear(p, start));
  if (at < 0) return undefined;
  const corner = (step: number): Point64 | undefined => other[(at + step + other.length) % other.length];
  if (path.every((p, i) => isNear(p, corner(i)))) return 'same';
  return path.every((p, i) => isNear(p, corner(-i))) ? 'reversed' : undefined;
}
