import type { Stretch } from '../contour.ts';
import { between, type Cubic, coordinateAt } from '../cubic.ts';
import type { Point } from '../plane.ts';

/*
 * Cubics through digitised points. Source: P. J. Schneider, An Algorithm for Automatically Fitting Digitized Curves,
 * in Graphics Gems, 1990: least squares with given tangents at both ends, better parameters by Newton's method, and
 * where that does not suffice a cut at the worst point, with one tangent for both parts.
 */

/** How often parameters are bettered before a curve is cut. */
const ROUNDS = 8;

/** Parameters are bettered further while the square of the error falls to less than this share each time. */
const WORTH_BETTERING = 0.7;

/** A direction; its length does not matter. */
export type Direction = Point;

interface Run {
  readonly points: readonly Point[];
  /** Square of the distance that points may lie from the curve. */
  readonly most: number;
  readonly stretches: Stretch[];
}

/**
 * Curves that start at the first point, end at the last, and pass every point and every side between two within
 * `tolerance`; where no curve can do that from one point to the next, a line.
 * @param points at least two, no two in a row the same
 * @param start direction in which the first curve leaves
 * @param end direction in which the last curve arrives
 */
export function fitCubics(
  points: readonly Point[],
  start: Direction,
  end: Direction,
  tolerance: number,
): Stretch[] {
  const run = { points, most: tolerance * tolerance, stretches: [] };
  let from = 0;
  let direction = unit(start);
  for (const cut of cutsByTurn(points)) {
    const tangent = tangentAt(points, cut);
    approach(run, from, cut, direction, tangent);
    from = cut;
    direction = tangent;
  }
  approach(run, from, points.length - 1, direction, unit(end));
  return run.stretches;
}

/** What a cubic can turn and still be like an arc; a little over a quarter, for the ragged ends of digitised arcs. */
const MOST_TURN = (Math.PI / 2) * 1.1;

/** Where to cut a run beforehand, so that its parts turn equally and each no more than a quarter: cuts in whole quarters. */
function cutsByTurn(points: readonly Point[]): number[] {
  const turns = points.map((p, index) => {
    const [before, after] = [points[index - 1], points[index + 1]];
    if (!before || !after) return 0;
    const [ux, uy, vx, vy] = [p.x - before.x, p.y - before.y, after.x - p.x, after.y - p.y];
    return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
  });
  const total = turns.reduce((sum, turned) => sum + turned, 0);
  const parts = Math.ceil(total / MOST_TURN);
  const cuts: number[] = [];
  let turned = 0;
  for (const [index, here] of turns.entries()) {
    turned += here;
    const isDue = turned >= (total * (cuts.length + 1)) / parts;
    if (isDue && cuts.length + 1 < parts && index > 0 && index < points.length - 1) cuts.push(index);
  }
  return cuts;
}

function approach(run: Run, first: number, last: number, start: Direction, end: Direction): void {
  const { points, most, stretches } = run;
  let parameters = byChords(points, first, last);
  let worst = { square: Infinity, at: first };
  let before = Infinity;
  for (let round = 0; round <= ROUNDS; round++) {
    const curve = leastSquares(points, first, parameters, start, end);
    worst = worstOf(points, first, parameters, curve);
    if (worst.square <= most) {
      stretches.push({ control: [curve[1], curve[2]], to: curve[3] });
      return;
    }
    if (worst.square > before * WORTH_BETTERING) break;
    before = worst.square;
    parameters = bettered(points, first, parameters, curve);
  }
  if (last - first === 1) {
    stretches.push({ to: at(points, last) });
    return;
  }
  const tangent = tangentAt(points, worst.at);
  approach(run, first, worst.at, start, tangent);
  approach(run, worst.at, last, tangent, end);
}

const at = (points: readonly Point[], index: number): Point => points[index] ?? { x: 0, y: 0 };

const unit = ({ x, y }: Direction): Direction => {
  const length = Math.hypot(x, y) || 1;
  return { x: x / length, y: y / length };
};

/** The direction at a point between two others, of the parabola through the three. */
export function tangentAt(points: readonly Point[], index: number): Direction {
  const [p, q, r] = [at(points, index - 1), at(points, index), at(points, index + 1)];
  return middleTangent(p, q, r);
}

/** The direction at the middle one of three points, of the parabola through them. */
export function middleTangent(p: Point, q: Point, r: Point): Direction {
  const before = Math.hypot(q.x - p.x, q.y - p.y) || 1;
  const after = Math.hypot(r.x - q.x, r.y - q.y) || 1;
  return unit({
    x: ((q.x - p.x) / before) * after + ((r.x - q.x) / after) * before,
    y: ((q.y - p.y) / before) * after + ((r.y - q.y) / after) * before,
  });
}

/** The direction at the first of three points, of the parabola through them. */
export function endTangent(p: Point, q: Point, r: Point): Direction {
  const chord = unit({ x: q.x - p.x, y: q.y - p.y });
  const middle = middleTangent(p, q, r);
  const along = 2 * (chord.x * middle.x + chord.y * middle.y);
  // a parabola's chord halves the angle between the directions at its ends, as near as matters here
  return { x: along * chord.x - middle.x, y: along * chord.y - middle.y };
}

function byChords(points: readonly Point[], first: number, last: number): number[] {
  const lengths = [0];
  let length = 0;
  for (let i = first + 1; i <= last; i++) {
    const [p, q] = [at(points, i - 1), at(points, i)];
    length += Math.hypot(q.x - p.x, q.y - p.y);
    lengths.push(length);
  }
  return lengths.map((value) => value / length);
}

/** The cubic with given ends and directions there that is nearest to points at given parameters. */
function leastSquares(
  points: readonly Point[],
  first: number,
  parameters: readonly number[],
  start: Direction,
  end: Direction,
): Cubic {
  const p0 = at(points, first);
  const p3 = at(points, first + parameters.length - 1);
  // normal equations for how far the inner control points lie from the ends
  let [ss, se, ee, sr, er] = [0, 0, 0, 0, 0];
  const cosine = -(start.x * end.x + start.y * end.y);
  for (const [i, t] of parameters.entries()) {
    const s = 1 - t;
    const b1 = 3 * s * s * t;
    const b2 = 3 * s * t * t;
    const share = s * s * s + b1;
    const p = at(points, first + i);
    const x = p.x - (p0.x * share + p3.x * (1 - share));
    const y = p.y - (p0.y * share + p3.y * (1 - share));
    ss += b1 * b1;
    se += b1 * b2 * cosine;
    ee += b2 * b2;
    sr += b1 * (start.x * x + start.y * y);
    er -= b2 * (end.x * x + end.y * y);
  }
  const chord = Math.hypot(p3.x - p0.x, p3.y - p0.y);
  const determinant = ss * ee - se * se;
  let reachStart = (sr * ee - er * se) / determinant;
  let reachEnd = (ss * er - se * sr) / determinant;
  // where points are too few or too strange, thirds of the chord; a curve that turns a quarter has reaches of 0.4
  const usable = (reach: number) => reach > chord * 1e-3 && reach < chord;
  if (!usable(reachStart) || !usable(reachEnd)) reachStart = reachEnd = chord / 3;
  return [
    p0,
    { x: p0.x + start.x * reachStart, y: p0.y + start.y * reachStart },
    { x: p3.x - end.x * reachEnd, y: p3.y - end.y * reachEnd },
    p3,
  ];
}

/** Sides that take more than this share of a curve are looked at between their ends too, where it could stray. */
const LONG_SIDE = 0.1;

/** The square of the greatest distance of points and long sides from a curve, and the inner point there. */
function worstOf(points: readonly Point[], first: number, parameters: readonly number[], curve: Cubic) {
  const [a, b, c, d] = curve;
  const last = parameters.length - 1;
  const worst = { square: 0, at: first + (parameters.length >> 1) };
  const look = (square: number, index: number): void => {
    if (square <= worst.square) return;
    worst.square = square;
    worst.at = first + Math.min(last - 1, Math.max(1, index));
  };
  for (let i = 0; i < last; i++) {
    const t = parameters[i] ?? 0;
    const part = (parameters[i + 1] ?? 1) - t;
    const p = at(points, first + i);
    const dx = coordinateAt(a.x, b.x, c.x, d.x, t) - p.x;
    const dy = coordinateAt(a.y, b.y, c.y, d.y, t) - p.y;
    look(dx * dx + dy * dy, i);
    if (part < LONG_SIDE) continue;
    const q = at(points, first + i + 1);
    for (const share of [1 / 4, 1 / 2, 3 / 4]) {
      const x = coordinateAt(a.x, b.x, c.x, d.x, t + share * part) - p.x;
      const y = coordinateAt(a.y, b.y, c.y, d.y, t + share * part) - p.y;
      const across = x * (q.y - p.y) - y * (q.x - p.x);
      look(across ** 2 / ((q.x - p.x) ** 2 + (q.y - p.y) ** 2), share < 1 / 2 ? i : i + 1);
    }
  }
  return worst;
}

/** Each parameter moved towards the foot of its point on the curve, by one step of Newton's method. */
function bettered(
  points: readonly Point[],
  first: number,
  parameters: readonly number[],
  curve: Cubic,
): number[] {
  const [a, b, c, d] = curve;
  return parameters.map((t, i) => {
    const p = at(points, first + i);
    const [ab, bc, cd] = [between(a, b, t), between(b, c, t), between(c, d, t)];
    const [abc, bcd] = [between(ab, bc, t), between(bc, cd, t)];
    const x = abc.x + (bcd.x - abc.x) * t - p.x;
    const y = abc.y + (bcd.y - abc.y) * t - p.y;
    const velocity = { x: 3 * (bcd.x - abc.x), y: 3 * (bcd.y - abc.y) };
    const bend = { x: 6 * (cd.x - 2 * bc.x + ab.x), y: 6 * (cd.y - 2 * bc.y + ab.y) };
    const slope = velocity.x ** 2 + velocity.y ** 2 + x * bend.x + y * bend.y;
    if (slope <= 0) return t;
    return Math.min(1, Math.max(0, t - (x * velocity.x + y * velocity.y) / slope));
  });
}
