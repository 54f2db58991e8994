import { mm, type Nm } from '../../lengths/nanometres.ts';

/**
 * How wide a bridge has to be, in nanometres: the most of 2 mm, 5 % of the height, and 3 × the paper's caliper. The 5 %
 * are those of makers' stencils, 0.05 in on letters of 1 in; the others are *common practice*.
 * @param height of capitals, or of the largest piece that is held
 */
export const bridgeWidth = (height: Nm, caliper: Nm): Nm =>
  Math.round(Math.max(mm(2), 0.05 * height, 3 * caliper));
