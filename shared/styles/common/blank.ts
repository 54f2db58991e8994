import type { FoldProgram, FoldStep, Panel, Step } from '../../creases/fold-program.ts';
import { boxOf } from '../../folding/flat-faces.ts';
import { twiceArea } from '../../folding/plane-overlap.ts';
import type { Point } from '../../geometry/plane.ts';

type Corner = readonly [x: number, y: number];
type Names = Pick<Panel, 'title' | 'label' | 'labels'>;

const pointAt = ([x, y]: Corner): Point => ({ x, y });

/** A panel of one convex piece, by its corners in order. */
export const panelOf = (name: string, corners: readonly Corner[], names: Names = {}): Panel =>
  panelOfPieces(name, [corners], names);

/** A panel that is no convex piece, by the convex pieces that make it up. */
export function panelOfPieces(
  name: string,
  pieces: readonly (readonly Corner[])[],
  names: Names = {},
): Panel {
  const points = pieces.map((corners) => clockwise(corners.map(pointAt)));
  return { name, ...names, ...boxOf(points.flat()), pieces: points };
}

const clockwise = (corners: readonly Point[]): readonly Point[] =>
  twiceArea(corners) < 0 ? corners.toReversed() : corners;

/** The corners of an upright rectangle. */
export const rectangle = (left: number, top: number, right: number, bottom: number): readonly Corner[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** A fold along the line through two points; whatever lies on the side of the third moves. */
export const foldAlong = (
  name: string,
  [from, to]: readonly [Corner, Corner],
  moving: Corner,
  rest: Partial<Omit<FoldStep, 'kind' | 'name' | 'line' | 'moving'>> = {},
): FoldStep => ({
  kind: 'fold',
  name,
  line: { from: pointAt(from), to: pointAt(to) },
  moving: pointAt(moving),
  direction: 'toward',
  angle: 180,
  ...rest,
});

/** A program on the blank that its panels make up. */
export const programOn = (panels: readonly Panel[], steps: readonly Step[]): FoldProgram => ({
  outline: outlineAround(panels),
  panels,
  steps,
});

const nameOf = ({ x, y }: Point): string => `${x},${y}`;

/** The corners around all panels: their pieces' edges less those that two of them share. */
function outlineAround(panels: readonly Panel[]): readonly Point[] {
  const pieces = panels.flatMap((panel) => panel.pieces ?? []);
  const every = pieces.flat();
  const edges = pieces.flatMap((corners) =>
    corners.flatMap((from, index) => {
      const to = corners[(index + 1) % corners.length] ?? from;
      const stops = [from, ...onTheWay(from, to, every), to];
      return stops.slice(1).map((stop, at) => [stops[at] ?? from, stop] as const);
    }),
  );
  const inner = new Set(edges.map(([from, to]) => `${nameOf(from)} ${nameOf(to)}`));
  const next = new Map(
    edges
      .filter(([from, to]) => !inner.has(`${nameOf(to)} ${nameOf(from)}`))
      .map(([from, to]) => [nameOf(from), to]),
  );
  const [start] = [...next.values()];
  if (!start) throw new Error('a blank needs panels');
  const loop = [start];
  for (
    let here = next.get(nameOf(start));
    here && nameOf(here) !== nameOf(start);
    here = next.get(nameOf(here))
  ) {
    if (loop.length > next.size) throw new Error('the panels’ border touches itself');
    loop.push(here);
  }
  if (loop.length !== next.size) throw new Error('the panels are no single piece of paper');
  return loop.filter((point, index) => {
    const [before, after] = [loop.at(index - 1) ?? point, loop[(index + 1) % loop.length] ?? point];
    return (point.x - before.x) * (after.y - point.y) !== (point.y - before.y) * (after.x - point.x);
  });
}

/** Other corners on an edge, in order. */
function onTheWay(from: Point, to: Point, corners: readonly Point[]): readonly Point[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ({ x, y }: Point) => (x - from.x) * dx + (y - from.y) * dy;
  const found = new Map(
    corners
      .filter(
        (corner) =>
          Math.abs((corner.x - from.x) * dy - (corner.y - from.y) * dx) <= Math.hypot(dx, dy) / 2 &&
          along(corner) > 0 &&
          along(corner) < dx * dx + dy * dy,
      )
      .map((corner) => [nameOf(corner), corner]),
  );
  return [...found.values()].toSorted((one, other) => along(one) - along(other));
}
