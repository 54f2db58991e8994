import type { Rectangle } from './free-space.ts';
import type { SharedEdge } from './nesting.ts';

interface Side {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Stretches where a side of one rectangle lies on the opposite side of another; those in line that touch are one. */
export function sharedEdges(rectangles: readonly Rectangle[]): readonly SharedEdge[] {
  const upright = meeting(
    rectangles.map(({ x, y, width, height }) => ({ at: x + width, from: y, to: y + height })),
    rectangles.map(({ x, y, height }) => ({ at: x, from: y, to: y + height })),
  );
  const level = meeting(
    rectangles.map(({ x, y, width, height }) => ({ at: y + height, from: x, to: x + width })),
    rectangles.map(({ x, y, width }) => ({ at: y, from: x, to: x + width })),
  );
  return [
    ...upright.map(({ at, from, to }) => ({ x1: at, y1: from, x2: at, y2: to })),
    ...level.map(({ at, from, to }) => ({ x1: from, y1: at, x2: to, y2: at })),
  ];
}

function meeting(ends: readonly Side[], starts: readonly Side[]): readonly Side[] {
  const byPlace = Map.groupBy(starts, ({ at }) => at);
  const stretches = ends.flatMap((end) =>
    (byPlace.get(end.at) ?? []).flatMap((start) => {
      const [from, to] = [Math.max(end.from, start.from), Math.min(end.to, start.to)];
      return from < to ? [{ at: end.at, from, to }] : [];
    }),
  );
  const joined: Side[] = [];
  for (const side of stretches.sort((one, other) => one.at - other.at || one.from - other.from)) {
    const last = joined.at(-1);
    if (last !== undefined && last.at === side.at && side.from <= last.to)
      joined[joined.length - 1] = { ...last, to: Math.max(last.to, side.to) };
    else joined.push(side);
  }
  return joined;
}
