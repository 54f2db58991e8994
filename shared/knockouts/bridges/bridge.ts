import { signedArea } from '../../geometry/area.ts';
import { subtract, unite } from '../../geometry/clip/combine.ts';
import type { Contour, Shape } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/plane.ts';
import { type Bar, barOutline } from './bar.ts';
import { barsFor, type PlacedBar } from './choose-bars.ts';
import { islandsOf } from './islands.ts';
import { islandOutlines } from './outlines.ts';

/** Which way is up at a point of a figure, as a vector of length 1: bridges run along it where they can. */
export type UpAt = (p: Point) => Point;

export const upright: UpAt = () => ({ x: 0, y: -1 });

/** Bars of a first round that meet may leave an island of islands; each further round holds what is left. */
const MOST_ROUNDS = 4;

/** Openings that bars leave smaller than this, in nm² (0.2 mm²), are left uncut: no tool cuts them cleanly. */
const CRUMB = 0.2e12;

/** A figure whose islands are held, and the bars that hold them. */
export interface Bridged {
  readonly shape: Shape;
  readonly bars: readonly Bar[];
}

/**
 * Leaves bridges across a figure so that no piece of paper falls out of it. A figure without islands comes back as it is.
 * @param width of each bridge, in nanometres
 * @param upAt which way is up where; default: upright everywhere
 */
export function bridgeWithBars(shape: Shape, width: number, upAt: UpAt = upright): Bridged {
  let result = shape;
  const bars: Bar[] = [];
  for (let round = 0; round < MOST_ROUNDS && islandsOf(result).length > 0; round++) {
    const added = roundOfBars(result, width, upAt);
    if (added.length === 0) break;
    bars.push(...added);
    const cut = subtract(result, unite(added.map((bar) => [barOutline(bar)])));
    result = withoutCrumbs(cut, result);
  }
  return { shape: result, bars };
}

/** {@link bridgeWithBars}, for those who only want the figure. */
export const bridge = (shape: Shape, width: number, upAt: UpAt = upright): Shape =>
  bridgeWithBars(shape, width, upAt).shape;

function roundOfBars(shape: Shape, width: number, upAt: UpAt): Bar[] {
  const placed: PlacedBar[] = [];
  for (const island of islandOutlines(shape))
    placed.push(...barsFor(island, width, upAt(island.centre), placed));
  return placed.map(({ bar }) => bar);
}

const withoutCrumbs = (cut: Shape, before: Shape): Shape => {
  const whole = new Set<Contour>(before);
  return cut.filter((contour) => whole.has(contour) || Math.abs(signedArea(contour)) >= CRUMB);
};
