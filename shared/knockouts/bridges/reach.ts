import type { Point } from '../../geometry/plane.ts';
import { mm } from '../../lengths/nanometres.ts';
import type { Bar } from './bar.ts';
import { type Crossing, crossingsOf, type IslandOutline } from './outlines.ts';

/** A bar that could hold an island. */
export interface Candidate {
  readonly bar: Bar;
  /** What the bar leads to: the opening's rim or another island, by its contour. */
  readonly to: number;
  /** The lower the better: how long it is (long ones all the more), how slanted its ends are, what else it cuts; in nanometres. */
  readonly cost: number;
}

/** How far a bar reaches into the paper at both ends, so that it surely joins. */
const JOIN = mm(0.1);

/** Lines along a bar on which its ends are measured, as shares of half its width. */
const LINES = [0, -1, 1, -0.5, 0.5];

/** Where one line along a bar leaves the island and where it reaches other paper. */
interface Span {
  readonly start: number | undefined;
  readonly end: number;
  readonly next: number;
  readonly to: number | undefined;
}

/**
 * The bar that leaves an island along a direction; none where it leads nowhere.
 * @param through a point on the bar's middle line
 */
export function reachFrom(
  island: IslandOutline,
  through: Point,
  along: Point,
  width: number,
): Candidate | undefined {
  const right = { x: -along.y, y: along.x };
  const spans: Span[] = [];
  for (const share of LINES) {
    const aside = (share * width) / 2;
    const origin = { x: through.x + right.x * aside, y: through.y + right.y * aside };
    const span = spanOn(crossingsOf(island.opening, origin, along), island.contour, spans[0]?.start);
    if (!span) return undefined;
    spans.push(span);
  }
  const to = spans[0]?.to;
  const starts = spans.flatMap(({ start }) => (start === undefined ? [] : [start]));
  if (to === undefined || starts.length === 0) return undefined;
  const end = Math.max(...spans.map((span) => span.end));
  const middle = (island.centre.x - through.x) * along.x + (island.centre.y - through.y) * along.y;
  // an island that is narrower than the bar is held across all of its width
  const start = Math.min(...starts, starts.length < LINES.length ? middle : Infinity);
  const slant = Math.max(...starts) - start + end - Math.min(...spans.map((span) => span.end));
  const cutsMore = spans.some(({ next }) => next < end + 2 * JOIN);
  const length = end - start + 2 * JOIN;
  const forward = start - JOIN;
  return {
    bar: {
      from: { x: through.x + along.x * forward, y: through.y + along.y * forward },
      along,
      length,
      width,
    },
    to,
    cost: length + (length * length) / (6 * width) + slant + (cutsMore ? 10 * width : 0),
  };
}

/**
 * @param fallback where the bar's middle line leaves the island, for lines that pass it by
 */
function spanOn(
  crossings: readonly Crossing[],
  island: number,
  fallback: number | undefined,
): Span | undefined {
  const last = crossings.findLastIndex(({ contour }) => contour === island);
  const leaves = crossings[last];
  if (leaves) {
    const end = crossings[last + 1];
    return (
      end && { start: leaves.at, end: end.at, next: crossings[last + 2]?.at ?? Infinity, to: end.contour }
    );
  }
  if (fallback === undefined) return undefined;
  const beyond = crossings.filter(({ at }) => at > fallback);
  // an even number of crossings to come: the line runs through paper already
  const inside = beyond.length % 2 === 1;
  return {
    start: undefined,
    end: (inside ? beyond[0]?.at : undefined) ?? fallback,
    next: beyond[inside ? 1 : 0]?.at ?? Infinity,
    to: undefined,
  };
}
