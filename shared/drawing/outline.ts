import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import { polygon } from '../geometry/walk.ts';
import type { Cut } from './drawing.ts';

/** The corners of the blank without those that are none, clockwise as seen. */
export function cornersOf(pattern: CreasePattern): readonly Point[] {
  const border = pattern.edges.filter((edge) => edge.letter === 'B');
  const neighbours = new Map<number, number[]>();
  for (const { ends } of border) {
    for (const [from, to] of [ends, ends.toReversed()] as [number, number][]) {
      neighbours.set(from, [...(neighbours.get(from) ?? []), to]);
    }
  }
  const start = border[0]?.ends[0] ?? 0;
  const loop = [start];
  for (let here = start, before = -1; ; ) {
    const next = neighbours
      .get(here)
      ?.find((vertex) => vertex !== before && (vertex !== start || loop.length > 2));
    if (next === undefined || next === start) break;
    loop.push(next);
    [before, here] = [here, next];
  }
  const corners = loop.flatMap((vertex) => pattern.vertices[vertex] ?? []);
  return clockwise(withoutStraight(corners));
}

/** The blank's outline as one closed cut. */
export const outlineOf = (pattern: CreasePattern): Cut => ({
  id: 'outline',
  contours: [polygon(cornersOf(pattern))],
});

/** What to cut off a rectangle from (0, 0) to (width, height) so that a blank with these corners is left. */
export function offcutsOf(corners: readonly Point[], width: number, height: number): Cut[] {
  const rectangle = { width, height };
  const at = (index: number): Point => corners[index % corners.length] ?? { x: 0, y: 0 };
  const offcuts: Cut[] = [];
  for (const [index, from] of corners.entries()) {
    if (sidesAt(from, rectangle).length === 0 || isAlong(from, at(index + 1), rectangle)) continue;
    // the outline leaves the sheet's edge here and comes back to it later
    const run = [from];
    do run.push(at(index + run.length));
    while (run.length <= corners.length && sidesAt(run.at(-1) ?? from, rectangle).length === 0);
    const beyond = cornersBetween(from, run.at(-1) ?? from, rectangle);
    const id = `${beyond.length === 1 ? 'corner' : 'offcut'}-${offcuts.length + 1}`;
    offcuts.push({ id, contours: [polygon([...run, ...beyond.toReversed()])] });
  }
  return offcuts;
}

interface Rectangle {
  readonly width: number;
  readonly height: number;
}

type RectangleSide = 'top' | 'right' | 'bottom' | 'left';

/** The sides of the rectangle on which a point lies. */
const sidesAt = ({ x, y }: Point, { width, height }: Rectangle): readonly RectangleSide[] => [
  ...(y === 0 ? (['top'] as const) : []),
  ...(x === width ? (['right'] as const) : []),
  ...(y === height ? (['bottom'] as const) : []),
  ...(x === 0 ? (['left'] as const) : []),
];

/** Whether both ends of an edge lie on one side. */
const isAlong = (from: Point, to: Point, rectangle: Rectangle): boolean =>
  sidesAt(from, rectangle).some((side) => sidesAt(to, rectangle).includes(side));

/** The rectangle's corners on the way round from one point on its edge to another, clockwise as seen. */
function cornersBetween(from: Point, to: Point, rectangle: Rectangle): readonly Point[] {
  const { width, height } = rectangle;
  const round = 2 * (width + height);
  const placeOf = (point: Point): number => {
    const [side] = sidesAt(point, rectangle);
    if (side === 'top') return point.x;
    if (side === 'right') return width + point.y;
    return side === 'bottom' ? 2 * width + height - point.x : round - point.y;
  };
  const ahead = (place: number): number => (place - placeOf(from) + round) % round;
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ]
    .filter((corner) => ahead(placeOf(corner)) > 0 && ahead(placeOf(corner)) < ahead(placeOf(to)))
    .toSorted((one, other) => ahead(placeOf(one)) - ahead(placeOf(other)));
}

function withoutStraight(points: readonly Point[]): Point[] {
  return points.filter((point, index) => {
    const before = points.at(index - 1) ?? point;
    const after = points[(index + 1) % points.length] ?? point;
    return (point.x - before.x) * (after.y - point.y) !== (point.y - before.y) * (after.x - point.x);
  });
}

function clockwise(points: readonly Point[]): readonly Point[] {
  const area = points.reduce((sum, p, index) => {
    const q = points[(index + 1) % points.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  const turned = area < 0 ? points.toReversed() : points;
  const first = turned.reduce((best, p, index) => {
    const q = turned[best] ?? p;
    return p.y < q.y || (p.y === q.y && p.x < q.x) ? index : best;
  }, 0);
  return [...turned.slice(first), ...turned.slice(0, first)];
}
