import type { Path64 } from 'clipper2-ts';
import type { Contour, Stretch } from '../contour.ts';
import type { Point } from '../plane.ts';
import { type Direction, endTangent, fitCubics, middleTangent } from './fit-cubics.ts';
import { CLIP_ERROR, UNIT } from './units.ts';

/** How far points of a polygon may lie from the curves that take their place: 7 µm. */
const FIT_ERROR = 7000;

/** Points of a polygon nearer than this to the one before are left out, 3 µm: directions between them are noise. */
const CLOSE = 3000;

/** Chords of curves have no more sagitta than this, 5 µm; a side that would have more is straight, a turn a corner. */
const MOST_SAGITTA = 2 * CLIP_ERROR;

/** A turn of more than 30° is a corner however short its sides are: curves are cut into smaller turns. */
const SHARP = Math.PI / 6;

/** What is known of a polygon's corner and the side that leaves it. */
interface Knot {
  readonly at: Point;
  /** Radians turned here. */
  readonly turned: number;
  readonly side: number;
  isCorner: boolean;
  /** Whether the side that leaves is a line in its own right, not the chord of a curve. */
  isStraight: boolean;
}

/**
 * A closed polygon that stands for curves, corners and lines as a contour: within 10 µm of it, of few stretches.
 * Nothing where the polygon has no inside.
 */
export function refit(path: Path64): Contour | undefined {
  const knots = knotsOf(spaced(path));
  const count = knots.length;
  if (count < 3) return undefined;
  const isBreak = (index: number): boolean =>
    isTrue(knots[index]?.isCorner) ||
    isTrue(knots[index]?.isStraight) ||
    isTrue(knots.at(index - 1)?.isStraight);
  const first = knots.findIndex((_, index) => isBreak(index));
  const start = Math.max(0, first);
  const knot = (index: number): Knot | undefined => knots[(start + index + count) % count];
  const stretches: Stretch[] = [];
  for (let from = 0; from < count; ) {
    let to = from + 1;
    while (to < count && !isBreak((start + to) % count)) to += 1;
    stretches.push(...stretchesBetween(knot, from, to));
    from = to;
  }
  const last = stretches.at(-1);
  return last && { start: last.to, stretches };
}

const isTrue = (value: boolean | undefined): boolean => value === true;

function spaced(path: Path64): Point[] {
  const points: Point[] = [];
  const add = (p: Point): void => {
    const last = points.at(-1);
    if (!last || Math.hypot(p.x - last.x, p.y - last.y) > CLOSE) points.push(p);
  };
  for (const { x, y } of path) add({ x: x * UNIT, y: y * UNIT });
  const [start] = points;
  const end = points.at(-1);
  if (start && end && Math.hypot(start.x - end.x, start.y - end.y) <= CLOSE) points.pop();
  return points;
}

function knotsOf(points: readonly Point[]): Knot[] {
  const knots = points.map((at, index): Knot => {
    const before = points.at(index - 1) ?? at;
    const after = points[index + 1] ?? points[0] ?? at;
    const into = { x: at.x - before.x, y: at.y - before.y };
    const out = { x: after.x - at.x, y: after.y - at.y };
    const turned = Math.abs(Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y));
    return { at, turned, side: Math.hypot(out.x, out.y), isCorner: false, isStraight: false };
  });
  // an arc of a small angle has a sagitta of chord · angle / 8
  for (const [index, knot] of knots.entries()) {
    const shorter = Math.min(knots.at(index - 1)?.side ?? 0, knot.side);
    knot.isCorner = knot.turned > SHARP || (knot.turned * shorter) / 8 > MOST_SAGITTA;
  }
  for (const [index, knot] of knots.entries()) {
    const next = knots[(index + 1) % knots.length] ?? knot;
    // a corner says nothing of the curve that may begin there
    const turned = Math.max(knot.isCorner ? 0 : knot.turned, next.isCorner ? 0 : next.turned);
    knot.isStraight = (knot.isCorner && next.isCorner) || (knot.side * turned) / 8 > MOST_SAGITTA;
  }
  return knots;
}

/** The stretches from one knot to another between which there is no corner and no straight side, or one such side. */
function stretchesBetween(knot: (index: number) => Knot | undefined, from: number, to: number): Stretch[] {
  const points: Point[] = [];
  for (let i = from; i <= to; i++) {
    const at = knot(i)?.at;
    if (at) points.push(at);
  }
  const [p, q, r] = points;
  const [x, y, z] = points.slice(-3);
  if (!p || !q || !r || !x || !y || !z) return points.slice(1).map((end) => ({ to: end }));
  const start = directionInto(knot, from) ?? endTangent(p, q, r);
  const end = directionOutOf(knot, to) ?? opposite(endTangent(z, y, x));
  return fitCubics(points, start, end, FIT_ERROR);
}

const opposite = ({ x, y }: Direction): Direction => ({ x: -x, y: -y });

/** The direction in which a curve has to leave a knot that is no corner. */
function directionInto(knot: (index: number) => Knot | undefined, index: number): Direction | undefined {
  const [before, here, after] = [knot(index - 1), knot(index), knot(index + 1)];
  if (!before || !here || !after || here.isCorner) return undefined;
  if (before.isStraight) return { x: here.at.x - before.at.x, y: here.at.y - before.at.y };
  return middleTangent(before.at, here.at, after.at);
}

/** The direction in which a curve has to arrive at a knot that is no corner. */
function directionOutOf(knot: (index: number) => Knot | undefined, index: number): Direction | undefined {
  const [before, here, after] = [knot(index - 1), knot(index), knot(index + 1)];
  if (!before || !here || !after || here.isCorner) return undefined;
  if (here.isStraight) return { x: after.at.x - here.at.x, y: after.at.y - here.at.y };
  return middleTangent(before.at, here.at, after.at);
}
