import type { Path64, Point64 } from 'clipper2-ts';
import { type Contour, isCurve, type Stretch } from '../contour.ts';
import { partOf } from '../cubic.ts';
import type { Point } from '../plane.ts';
import { reverse } from '../walk.ts';
import type { Meetings } from './meetings.ts';
import { type Corner, type Source, wayAlong } from './source.ts';
import { NEAR, UNIT } from './units.ts';

/** Points nearer than this many units in x and y, 1 µm, are drawn as one. */
const DRAWN = 10;

/** How far, in units, a point may lie from the side that it came from: it may stand for one next to it. */
const OFF = DRAWN + NEAR;

const noPoint: Point64 = { x: 0, y: 0 };

/** A side of a clipped polygon: all of, or a part of, a source's side, or a straight line of unknown origin. */
interface Piece {
  readonly corner: Corner | undefined;
  /** Parameters on the corner's stretch. */
  readonly start: number;
  readonly end: number;
  readonly to: Point;
}

/**
 * The contour that a clipped polygon stands for. One that was not cut is the source's own, walked backward if need
 * be; of one that was, each part of a curve is a curve again, with its ends on the polygon's corners.
 */
export function trace(path: Path64, source: Source, meetings: Meetings): Contour {
  const whole = wholeContour(path, source, meetings);
  if (whole) return whole;
  const points = distinct(path);
  const pieces = points.map((p, index) =>
    pieceFrom(p, points[index + 1] ?? points[0] ?? p, source, meetings),
  );
  const first = pieces.findIndex((piece, index) => !continues(pieces.at(index - 1), piece));
  const ordered = first > 0 ? [...pieces.slice(first), ...pieces.slice(0, first)] : pieces;
  const start = ordered.at(-1)?.to ?? { x: 0, y: 0 };
  return { start, stretches: stretchesOf(ordered, start) };
}

function wholeContour(
  path: Path64,
  { contours, corners, paths }: Source,
  meetings: Meetings,
): Contour | undefined {
  const [start] = path;
  for (const side of start ? meetings.sidesAt(start) : []) {
    const index = corners[side]?.contour ?? -1;
    const contour = contours[index];
    const way = wayAlong(path, paths[index] ?? [], 0);
    if (contour && way) return way === 'same' ? contour : reverse(contour);
  }
  return undefined;
}

/** Without points that would be drawn on the one before them. */
function distinct(path: Path64): Point64[] {
  const isApart = (p: Point64, q: Point64 | undefined): boolean =>
    q === undefined || Math.abs(p.x - q.x) > DRAWN || Math.abs(p.y - q.y) > DRAWN;
  const kept: Point64[] = [];
  for (const p of path) if (isApart(p, kept.at(-1))) kept.push(p);
  while (kept.length > 1 && !isApart(kept[0] ?? noPoint, kept.at(-1))) kept.pop();
  return kept;
}

function pieceFrom(p: Point64, q: Point64, { corners }: Source, meetings: Meetings): Piece {
  const exact = meetings.cornerAt(q);
  const to = exact?.start === 0 ? exact.from : { x: q.x * UNIT, y: q.y * UNIT };
  for (const number of [...meetings.sidesAt(p), ...meetings.sidesAt(q)]) {
    const corner = corners[number];
    const end = corners[corner?.next ?? -1]?.at;
    if (!corner || !end) continue;
    const start = shareAlong(corner.at, end, p);
    const stop = shareAlong(corner.at, end, q);
    if (start === undefined || stop === undefined) continue;
    const part = corner.end - corner.start;
    return { corner, start: corner.start + start * part, end: corner.start + stop * part, to };
  }
  return { corner: undefined, start: 0, end: 0, to };
}

/** Where from 0 to 1 along a side a point lies; nothing where it does not lie on it. */
function shareAlong(from: Point64, to: Point64, p: Point64): number | undefined {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const across = (p.x - from.x) * dy - (p.y - from.y) * dx;
  if (across * across > OFF * OFF * square) return undefined;
  const share = ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
  const slack = OFF / Math.sqrt(square);
  if (share < -slack || share > 1 + slack) return undefined;
  return Math.min(1, Math.max(0, share));
}

/** Whether a piece goes on along the same stretch the same way. */
function continues(before: Piece | undefined, piece: Piece): boolean {
  if (!before?.corner || !piece.corner) return false;
  if (before.corner.stretch !== piece.corner.stretch || before.corner.contour !== piece.corner.contour)
    return false;
  const forward = piece.end > piece.start;
  if (before.end > before.start !== forward) return false;
  return Math.abs(piece.start - before.end) < 1e-3;
}

function stretchesOf(pieces: readonly Piece[], start: Point): Stretch[] {
  const stretches: Stretch[] = [];
  let from = start;
  for (let i = 0; i < pieces.length; ) {
    const first = pieces[i];
    let last = first;
    for (i += 1; i < pieces.length && continues(last, pieces[i] ?? noPiece); i++) last = pieces[i];
    if (!first || !last) continue;
    stretches.push(stretchOf(first, last, from));
    from = last.to;
  }
  return stretches;
}

const noPiece: Piece = { corner: undefined, start: 0, end: 0, to: { x: 0, y: 0 } };

/** Pieces of one stretch as one: a part of its curve, moved to where it has to start and end. */
function stretchOf({ corner, start }: Piece, { end, to }: Piece, from: Point): Stretch {
  if (!corner || !isCurve(corner.stretch)) return { to };
  const [a, b, c, d] = partOf([corner.from, ...corner.stretch.control, corner.stretch.to], start, end);
  return {
    control: [
      { x: b.x + from.x - a.x, y: b.y + from.y - a.y },
      { x: c.x + to.x - d.x, y: c.y + to.y - d.y },
    ],
    to,
  };
}
