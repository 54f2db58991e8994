import { type Contour, isCurve, type Stretch } from '../geometry/contour.ts';
import { between } from '../geometry/cubic.ts';
import type { Point } from '../geometry/plane.ts';
import { walk } from '../geometry/walk.ts';
import { mm } from '../lengths/nanometres.ts';

/** A straight stretch that is shorter has no room for a start on it. */
const leastRoom = mm(1);

/** Lengths and turns that differ by less are one, so that rounding does not choose between equal sides. */
const SAME = 10;
const SAME_TURN = 1e-6;

/**
 * The same contour from another start: the middle of its longest straight stretch, where the end of a cut meets its
 * beginning without a notch; never a corner if it can be helped, since a knife that is set down there turns before it
 * cuts and tears. A contour of curves alone starts where it runs on most smoothly.
 */
export function startedWell(contour: Contour): Contour {
  const { stretches } = contour;
  const froms: Point[] = [];
  walk(contour, (from) => froms.push(from));
  const lengths = stretches.map((stretch, index) => straightLength(froms[index] ?? contour.start, stretch));
  const longest = firstBest(lengths, SAME);
  const [from, stretch] = [froms[longest], stretches[longest]];
  if (from && stretch && (lengths[longest] ?? 0) >= leastRoom) {
    const middle = between(from, stretch.to, 0.5);
    const rest = [...stretches.slice(longest + 1), ...stretches.slice(0, longest)];
    return { start: middle, stretches: [{ to: stretch.to }, ...rest, { to: middle }] };
  }
  const turns = stretches.map((each, index) => -turnAt(froms, stretches, index, each));
  const smoothest = firstBest(turns, SAME_TURN);
  return {
    start: froms[smoothest] ?? contour.start,
    stretches: [...stretches.slice(smoothest), ...stretches.slice(0, smoothest)],
  };
}

const straightLength = (from: Point, stretch: Stretch): number =>
  isCurve(stretch) ? 0 : Math.hypot(stretch.to.x - from.x, stretch.to.y - from.y);

/** The first of those that are as good as the best. */
function firstBest(values: readonly number[], same: number): number {
  const best = Math.max(...values);
  return Math.max(
    0,
    values.findIndex((value) => value >= best - same),
  );
}

/** How far the contour turns where a stretch begins, in radians. */
function turnAt(
  froms: readonly Point[],
  stretches: readonly Stretch[],
  index: number,
  next: Stretch,
): number {
  const [from, before] = [froms[index], stretches.at(index - 1)];
  const start = froms.at(index - 1);
  if (!from || !before || !start) return Math.PI;
  const into = direction(lastHandle(start, before), from);
  const out = direction(from, firstHandle(next, from));
  return Math.abs(Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y));
}

const isApart = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) > 1;

const lastHandle = (from: Point, stretch: Stretch): Point =>
  (isCurve(stretch) ? [stretch.control[1], stretch.control[0]] : []).find((p) => isApart(p, stretch.to)) ??
  from;

const firstHandle = (stretch: Stretch, from: Point): Point =>
  (isCurve(stretch) ? stretch.control : []).find((p) => isApart(p, from)) ?? stretch.to;

const direction = (from: Point, to: Point): Point => ({ x: to.x - from.x, y: to.y - from.y });
