import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import type { Cut } from './drawing.ts';

/** The blank's outline as one closed cut without corners that are none, clockwise as seen. */
export function outlineOf(pattern: CreasePattern): Cut {
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
  return { id: 'outline', points: clockwise(withoutStraight(corners)) };
}

/** What to cut off a rectangle from (0, 0) to (width, height) so that the outline is left. */
export function offcutsOf(outline: Cut, width: number, height: number): Cut[] {
  const count = outline.points.length;
  const offcuts: Cut[] = [];
  for (const [index, from] of outline.points.entries()) {
    const to = outline.points[(index + 1) % count] ?? from;
    if (from.x === to.x || from.y === to.y) continue;
    const corner = [
      { x: from.x, y: to.y },
      { x: to.x, y: from.y },
    ].find(({ x, y }) => (x === 0 || x === width) && (y === 0 || y === height));
    if (!corner) throw new Error('an outline edge leaves the sheet’s edge elsewhere than at a corner');
    offcuts.push({ id: `corner-${offcuts.length + 1}`, points: [from, to, corner] });
  }
  return offcuts;
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
