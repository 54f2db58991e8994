import { areaOf } from '../../geometry/area.ts';
import type { Shape } from '../../geometry/contour.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import { inMm } from '../../lengths/show-length.ts';
import { bridgeWithBars, type UpAt, upright } from './bridge.ts';
import { type Island, islandsOf } from './islands.ts';

/** A figure as it will be cut, and what would fall out of it. */
export interface Held {
  readonly shape: Shape;
  /** Pieces of paper that would fall out: none where bridges hold them. */
  readonly islands: readonly Island[];
  /** How many bridges hold what would fall out otherwise. */
  readonly bridges: number;
}

/** Why bridges are not drawn, and what to do about it. */
export interface HoldingFault {
  readonly message: string;
  readonly remedy: string;
}

/** Islands that are bridged at once: more than a line of letters has. */
const MOST_ISLANDS = 200;

/** How much of a figure has to be left beside its bridges, as a share of its area. */
const LEAST_LEFT = 1 / 3;

/**
 * A figure with bridges, or with a list of what falls out where there are to be none.
 * @param what the bridges are asked to be, and how wide each of them is
 */
export function holdIslands(
  shape: Shape,
  what: { readonly bridges: 'automatic' | 'none' | undefined; readonly width: Nm; readonly upAt?: UpAt },
): Held | HoldingFault {
  const islands = islandsOf(shape);
  if (what.bridges === 'none' || islands.length === 0) return { shape, islands, bridges: 0 };
  if (islands.length > MOST_ISLANDS)
    return {
      message: `${islands.length} pieces would fall out, more than the ${MOST_ISLANDS} that are bridged automatically`,
      remedy: 'draw the bridges yourself, or set bridges to none',
    };
  const bridged = bridgeWithBars(shape, what.width, what.upAt ?? upright);
  if (areaOf(bridged.shape) < LEAST_LEFT * areaOf(shape))
    return {
      message: `bridges of ${inMm(what.width)} mm leave less than a third of it to cut`,
      remedy: 'make it larger, give a smaller bridgeWidth, or set bridges to none',
    };
  return { shape: bridged.shape, islands: islandsOf(bridged.shape), bridges: bridged.bars.length };
}
