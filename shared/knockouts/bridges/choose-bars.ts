import type { Point } from '../../geometry/plane.ts';
import { mm } from '../../lengths/nanometres.ts';
import { type Bar, distanceBetween } from './bar.ts';
import type { IslandOutline } from './outlines.ts';
import { type Candidate, reachFrom } from './reach.ts';

/** A bar and the two contours that it joins. */
export interface PlacedBar {
  readonly bar: Bar;
  readonly island: number;
  readonly to: number;
}

/** Islands longer than this get four bridges, and two more for each further two lengths: *common practice*. */
const LONG = mm(40);
const MOST_BARS = 24;

/** How many places are tried across an island in each direction. */
const PLACES = 13;

/** How much dearer a bridge is that does not run along the height of letters, as makers draw them. */
const ASKEW = 1.6;
const DIAGONAL = 1.9;

/** From how many points of its edge an island is bridged where no bar along the axes serves. */
const EDGE_POINTS = 48;

const opposite = ({ x, y }: Point): Point => ({ x: -x, y: -y });
const halfway = (p: Point, q: Point): Point => ({
  x: (p.x + q.x) * Math.SQRT1_2,
  y: (p.y + q.y) * Math.SQRT1_2,
});
const rightOf = ({ x, y }: Point): Point => ({ x: -y, y: x });
const dot = (p: Point, q: Point): number => p.x * q.x + p.y * q.y;

/**
 * The bars that hold one island: two opposite ones in one line where it can be, more for long islands.
 * @param up which way is up where the island lies, of length 1
 * @param placed bars of other islands; those that lead to this one count
 */
export function barsFor(
  island: IslandOutline,
  width: number,
  up: Point,
  placed: readonly PlacedBar[],
): readonly PlacedBar[] {
  const { left, right, top, bottom } = island.bounds;
  const longest = Math.max(right - left, bottom - top);
  const wanted = longest <= LONG ? 2 : Math.min(MOST_BARS, 4 + 2 * Math.floor((longest - LONG) / (2 * LONG)));
  const held = placed.filter(({ to }) => to === island.contour).map(({ bar }) => bar);
  const chosen: Candidate[] = [];
  const isFree = ({ bar }: Candidate): boolean =>
    [...held, ...chosen.map((one) => one.bar)].every((other) => clear(bar, other));
  const take = (candidates: readonly (Candidate | undefined)[]): void => {
    for (const candidate of candidates)
      if (candidate && held.length + chosen.length < wanted && isFree(candidate)) chosen.push(candidate);
  };

  const across = rightOf(up);
  const [first] = held;
  if (held.length === 1 && first) {
    // a bar of another island holds it on one side: go on at the other, in the same line if that costs no more
    take([cheapest(inDirection(island, width, first.along, first.from))]);
  }
  const axes = [
    axisBars(island, width, up, 1),
    axisBars(island, width, across, ASKEW),
    axisBars(island, width, halfway(up, across), DIAGONAL),
    axisBars(island, width, halfway(up, opposite(across)), DIAGONAL),
  ]
    .filter((axis) => axis !== undefined)
    .sort((one, other) => one.cost - other.cost);
  for (const axis of axes) take(axis.bars);
  if (held.length + chosen.length < wanted) take(spread(edgeBars(island, width), chosen, island));
  return chosen.map(({ bar, to }) => ({ bar, island: island.contour, to }));
}

/** Whether two bars leave a piece between them that can be cut, or lie in one line. */
function clear(one: Bar, other: Bar): boolean {
  const inLine =
    Math.abs(dot(one.along, other.along)) > 0.999 &&
    Math.abs(dot({ x: one.from.x - other.from.x, y: one.from.y - other.from.y }, rightOf(one.along))) < 1;
  return inLine || distanceBetween(one, other) >= 1.75 * one.width;
}

const cheapest = (candidates: readonly Candidate[]): Candidate | undefined =>
  candidates.reduce<Candidate | undefined>(
    (best, one) => (best === undefined || one.cost < best.cost ? one : best),
    undefined,
  );

/** Points from which bars in one direction may start, how far off the island's middle each lies, and how wide it is. */
interface Places {
  readonly places: readonly { readonly through: Point; readonly off: number }[];
  readonly extent: number;
}

function placesAcross(island: IslandOutline, width: number, along: Point): Places {
  const right = rightOf(along);
  const offsets = island.points.map((p) =>
    dot({ x: p.x - island.centre.x, y: p.y - island.centre.y }, right),
  );
  const [least, most] = offsets.reduce(
    ([a, b], o) => [Math.min(a, o), Math.max(b, o)],
    [Infinity, -Infinity],
  );
  const middle = (least + most) / 2;
  const room = Math.max(0, (most - least - width) / 2);
  const count = room === 0 ? 1 : PLACES;
  const places = Array.from({ length: count }, (_, i) => {
    const off = count === 1 ? 0 : room * ((2 * i) / (count - 1) - 1);
    const aside = middle + off;
    return {
      through: { x: island.centre.x + right.x * aside, y: island.centre.y + right.y * aside },
      off: Math.abs(off),
    };
  });
  return { places, extent: most - least };
}

/** Bars in one direction; those near the middle, or in line with a point that is given, are the cheaper. */
function inDirection(island: IslandOutline, width: number, along: Point, inLineWith: Point): Candidate[] {
  const right = rightOf(along);
  const offset = (p: Point): number => dot({ x: p.x - inLineWith.x, y: p.y - inLineWith.y }, right);
  const places = placesAcross(island, width, along).places.map(({ through }) => through);
  return [...places, inLineWith].flatMap((through) => {
    const candidate = reachFrom(island, through, along, width);
    return candidate ? [{ ...candidate, cost: candidate.cost + Math.abs(offset(through)) }] : [];
  });
}

/** Two opposite bars in one line, where that line costs least. */
function axisBars(
  island: IslandOutline,
  width: number,
  along: Point,
  factor: number,
): { readonly bars: readonly Candidate[]; readonly cost: number } | undefined {
  let best: { bars: readonly Candidate[]; cost: number } | undefined;
  const { places, extent } = placesAcross(island, width, along);
  // a counter that the bars fill from side to side is hard to read
  const swallowed = Math.max(0, 2 * width - extent);
  for (const { through, off } of places) {
    const ahead = reachFrom(island, through, along, width);
    const back = reachFrom(island, through, opposite(along), width);
    if (!ahead || !back) continue;
    const cost = factor * (ahead.cost + back.cost + 2 * swallowed) + off;
    if (best === undefined || cost < best.cost) best = { bars: [ahead, back], cost };
  }
  return best;
}

/** Bars straight away from points all along the island's edge, for islands of any form. */
function edgeBars(island: IslandOutline, width: number): Candidate[] {
  const { points } = island;
  const lengths = points.map((p, i) => {
    const next = points[(i + 1) % points.length] ?? p;
    return Math.hypot(next.x - p.x, next.y - p.y);
  });
  const step = lengths.reduce((sum, length) => sum + length, 0) / EDGE_POINTS;
  const candidates: Candidate[] = [];
  let walked = 0;
  let next = step / 2;
  for (const [i, p] of points.entries()) {
    const q = points[(i + 1) % points.length] ?? p;
    const length = lengths[i] ?? 0;
    for (; length > 0 && next <= walked + length; next += step) {
      const share = (next - walked) / length;
      const through = { x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share };
      // counters run the other way round: the opening lies to the right of their sides as walked
      const away = { x: -(q.y - p.y) / length, y: (q.x - p.x) / length };
      const candidate = reachFrom(island, through, away, width);
      if (candidate) candidates.push(candidate);
    }
    walked += length;
  }
  return candidates.sort((one, other) => one.cost - other.cost);
}

/** The cheap ones first, but each as far round the island from those before it as its share of the round is. */
function spread(
  candidates: readonly Candidate[],
  chosen: readonly Candidate[],
  { centre }: IslandOutline,
): Candidate[] {
  const bearing = ({ bar }: Candidate): number => Math.atan2(bar.from.y - centre.y, bar.from.x - centre.x);
  const picked = [...chosen];
  for (const least of [Math.PI / 2, Math.PI / 4, Math.PI / 8, 0]) {
    for (const candidate of candidates) {
      const gaps = picked.map((other) => {
        const gap = Math.abs(bearing(candidate) - bearing(other));
        return Math.min(gap, 2 * Math.PI - gap);
      });
      if (!picked.includes(candidate) && gaps.every((gap) => gap >= least)) picked.push(candidate);
    }
  }
  return picked.slice(chosen.length);
}
