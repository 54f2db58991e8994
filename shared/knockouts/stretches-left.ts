import { contourBounds, overlap } from '../geometry/bounds.ts';
import type { Shape } from '../geometry/contour.ts';
import { flatten } from '../geometry/flatten.ts';
import { isInside } from '../geometry/inside.ts';
import type { Point } from '../geometry/plane.ts';
import { mm } from '../lengths/nanometres.ts';
import { grownBounds } from './bounds.ts';

/** Where a straight line is left, as shares of its length from 0 to 1, ascending. */
export type Stretch = readonly [from: number, to: number];

/** A line is cut off this near to where it meets a curve. */
const NEAR = mm(0.001);

/** Shorter stretches than this are left by rounding, or nobody could score them. */
const LEAST = mm(0.2);

/** A side of an opening that runs this near to the line, in nanometres, runs along it: there is an edge and no line. */
const ALONG = mm(0.005);

/** What openings leave of a straight line. */
export function stretchesLeft(from: Point, to: Point, openings: Shape): readonly Stretch[] {
  const box = grownBounds(
    {
      left: Math.min(from.x, to.x),
      right: Math.max(from.x, to.x),
      top: Math.min(from.y, to.y),
      bottom: Math.max(from.y, to.y),
    },
    ALONG,
  );
  const near = openings.filter((contour) => overlap(contourBounds(contour), box));
  if (near.length === 0) return [[0, 1]];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const polygons = near.map((contour) => flatten(contour, NEAR));
  const beside = polygons.flatMap((polygon) => sidesAlong(from, to, polygon));
  const stops = [...polygons.flatMap((polygon) => crossings(from, to, polygon)), ...beside.flat(), 0, 1];
  const ordered = stops.toSorted((one, other) => one - other);
  const left: [number, number][] = [];
  for (const [index, start] of ordered.entries()) {
    const end = ordered[index + 1] ?? start;
    const middle = (start + end) / 2;
    if (end <= start || beside.some(([first, last]) => first < middle && middle < last)) continue;
    if (isInside(near, along(from, to, middle))) continue;
    const last = left.at(-1);
    if (last && last[1] === start) last[1] = end;
    else left.push([start, end]);
  }
  return left.filter(([start, end]) => (end - start) * length >= Math.min(LEAST, length));
}

const along = (from: Point, to: Point, share: number): Point => ({
  x: from.x + share * (to.x - from.x),
  y: from.y + share * (to.y - from.y),
});

/** Where a line crosses a polygon, as shares of the line's length. */
function crossings(from: Point, to: Point, corners: readonly Point[]): number[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const aside = ({ x, y }: Point) => dx * (y - from.y) - dy * (x - from.x);
  return corners.flatMap((p, index) => {
    const q = corners[(index + 1) % corners.length] ?? p;
    const [here, there] = [aside(p), aside(q)];
    if (here * there > 0 || here === there) return [];
    const [start, end] = [shareOf(from, to, p), shareOf(from, to, q)];
    return clamped([start + (here / (here - there)) * (end - start)]);
  });
}

/** The sides of a polygon that run along a line, as shares of the line's length. */
function sidesAlong(from: Point, to: Point, corners: readonly Point[]): Stretch[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const isOn = ({ x, y }: Point) =>
    Math.abs((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) <= ALONG * length;
  return corners.flatMap((p, index): Stretch[] => {
    const q = corners[(index + 1) % corners.length] ?? p;
    if (!isOn(p) || !isOn(q)) return [];
    const shares = [shareOf(from, to, p), shareOf(from, to, q)].map((share) =>
      Math.min(1, Math.max(0, share)),
    );
    const [start, end] = [Math.min(...shares), Math.max(...shares)];
    // a side that is no longer than it may lie aside crosses the line
    return (end - start) * length > 4 * ALONG ? [[start, end]] : [];
  });
}

/** Where along a line a point lies, as a share of its length. */
const shareOf = (from: Point, to: Point, { x, y }: Point): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return (dx * (x - from.x) + dy * (y - from.y)) / (dx * dx + dy * dy);
};

const clamped = (shares: readonly number[]): number[] => shares.filter((share) => share > 0 && share < 1);
