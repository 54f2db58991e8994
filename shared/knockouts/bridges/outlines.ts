import { type Bounds, centreOf, contourBounds } from '../../geometry/bounds.ts';
import type { Shape } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import type { Point } from '../../geometry/plane.ts';
import { mm } from '../../lengths/nanometres.ts';
import { nestingOf } from './islands.ts';

/** Bars are found on polygons this near to the contours; they overlap the paper at both ends by more. */
const COARSE = mm(0.05);

/** An island as a polygon, with all contours of the opening around it. */
export interface IslandOutline {
  readonly contour: number;
  readonly points: readonly Point[];
  readonly bounds: Bounds;
  readonly centre: Point;
  /** The opening's own contours: its rim and every counter in it, the island's among them. */
  readonly opening: readonly Outline[];
}

/** A contour in runs of sides, each with its bounds, so that a line passes most of them by at once. */
export interface Outline {
  readonly contour: number;
  readonly runs: readonly Run[];
}

/** Points that follow each other along a contour; the last one is the first of the next run. */
interface Run {
  readonly points: readonly Point[];
  readonly centre: Point;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

const SIDES_A_RUN = 32;

function runsOf(points: readonly Point[]): Run[] {
  const runs: Run[] = [];
  const [first] = points;
  if (!first) return runs;
  const round = [...points, first];
  for (let from = 0; from + 1 < round.length; from += SIDES_A_RUN) {
    const run = round.slice(from, from + SIDES_A_RUN + 1);
    const xs = run.map(({ x }) => x);
    const ys = run.map(({ y }) => y);
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    runs.push({
      points: run,
      centre: { x: (left + right) / 2, y: (top + bottom) / 2 },
      halfWidth: (right - left) / 2,
      halfHeight: (bottom - top) / 2,
    });
  }
  return runs;
}

/** Every island of a figure with what surrounds it, the largest first. */
export function islandOutlines(shape: Shape): readonly IslandOutline[] {
  const { counters, around, areas } = nestingOf(shape);
  const outlines = shape.map((contour, index) => {
    const points = flatten(contour, COARSE);
    return { contour: index, points, runs: runsOf(points) };
  });
  const openings = new Map<number | undefined, Outline[]>();
  for (const index of counters) {
    const rim = around.get(index);
    const group = openings.get(rim) ?? outlines.filter(({ contour }) => contour === rim);
    openings.set(rim, [...group, ...outlines.filter(({ contour }) => contour === index)]);
  }
  return counters
    .flatMap((index) => {
      const contour = shape[index];
      const outline = outlines[index];
      if (!contour || !outline) return [];
      const bounds = contourBounds(contour);
      const opening = openings.get(around.get(index)) ?? [];
      return [{ contour: index, points: outline.points, bounds, centre: centreOf(bounds), opening }];
    })
    .sort((one, other) => Math.abs(areas[other.contour] ?? 0) - Math.abs(areas[one.contour] ?? 0));
}

/** Where a straight line meets a contour. */
export interface Crossing {
  /** How far along the line, from its origin. */
  readonly at: number;
  readonly contour: number;
}

/** All crossings of the line through a point along a vector of length 1, in order. */
export function crossingsOf(outlines: readonly Outline[], origin: Point, along: Point): Crossing[] {
  const crossings: Crossing[] = [];
  for (const { contour, runs } of outlines) {
    for (const run of runs)
      if (comesNear(run, origin, along)) addCrossings(run, contour, origin, along, crossings);
  }
  return crossings.sort((one, other) => one.at - other.at);
}

const comesNear = ({ centre, halfWidth, halfHeight }: Run, origin: Point, along: Point): boolean =>
  Math.abs(sideOf(centre, origin, along)) <=
  halfWidth * Math.abs(along.y) + halfHeight * Math.abs(along.x) + 1;

function addCrossings({ points }: Run, contour: number, origin: Point, along: Point, to: Crossing[]): void {
  let [before] = points;
  if (!before) return;
  let sideBefore = sideOf(before, origin, along);
  for (const p of points) {
    const side = sideOf(p, origin, along);
    if (side <= 0 !== sideBefore <= 0) {
      const share = sideBefore / (sideBefore - side);
      const x = before.x + (p.x - before.x) * share - origin.x;
      const y = before.y + (p.y - before.y) * share - origin.y;
      to.push({ at: x * along.x + y * along.y, contour });
    }
    before = p;
    sideBefore = side;
  }
}

const sideOf = (p: Point, origin: Point, along: Point): number =>
  (p.x - origin.x) * along.y - (p.y - origin.y) * along.x;
