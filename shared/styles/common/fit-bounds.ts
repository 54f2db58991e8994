import type { Nm } from '../../lengths/nanometres.ts';
import { atLeast, type Bound } from '../../solver/bounds.ts';
import type { Situation } from '../style.ts';

type Demand = NonNullable<Situation['demand']>;

/** A bound that the contents ask for, on one dimension. */
export const forContents = (name: string, dimension: string, least: Nm, because: string): Bound =>
  atLeast(name, 'fit', { [dimension]: 1 }, least, because, '/contents');

/**
 * What paper must measure between two folds to go round contents of a length and their stack: half of the stack at each
 * end, play, and what both folds take.
 */
export const around = (length: Nm, { inPocket, easeAlong }: Demand, foldLoss: Nm): Nm =>
  length + inPocket + easeAlong + 2 * foldLoss;

/** The same with one end open: half of the stack, play, and what the folds take. */
export const upTo = (length: Nm, { inPocket, easeAcross }: Demand, foldLoss: Nm): Nm =>
  length + Math.ceil(inPocket / 2) + easeAcross + foldLoss;

/** A pocket that is open above holds what stands in it only from a share of its height on. */
export const pocketHolds = (dimension: string, { height, itemName }: Demand, share: number): Bound =>
  forContents(
    'pocket height',
    dimension,
    Math.ceil(share * height),
    `a lower pocket would let the ${itemName} tip out`,
  );
