import type { Sheet } from '../solver/sheets.ts';
import type { Direction, Region } from './regions.ts';

type Prints = Pick<Sheet, 'oneWay' | 'printPair'>;

/**
 * Whether it is known which way the print of a face points: not on the inside of a one-way paper whose spec leaves open
 * how its two prints lie to each other.
 */
export const isPrintKnown = ({ oneWay, printPair }: Prints, face: Region['face']): boolean =>
  face === 'outside' || !oneWay || printPair !== undefined;

/** Which way the print of a region points; undefined where that is not known. */
export function directionShown(
  prints: Prints,
  { face, direction }: Pick<Region, 'face' | 'direction'>,
): Direction | undefined {
  if (!isPrintKnown(prints, face)) return undefined;
  return prints.printPair === 'head-to-foot' ? direction.headToFoot : direction.sameWay;
}

/** Pieces smaller than this, in square millimetres, are slivers at a fold. */
const sliver = 25;

/** The regions, slivers apart, where a print is seen to point one way. */
export const regionsPointing = (
  prints: Prints,
  regions: readonly Region[],
  direction: Direction,
): readonly Region[] =>
  regions.filter((region) => region.area > sliver && directionShown(prints, region) === direction);
