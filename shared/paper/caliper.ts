import { inch, type Nm } from '../lengths/nanometres.ts';

/** One point of caliper: 0.001 in. */
export const NM_PER_POINT: Nm = inch(0.001);

/** A caliper in points, in nanometres. */
export const pointsToNm = (points: number): Nm => Math.round(points * NM_PER_POINT);

/** A caliper in points. */
export const nmToPoints = (caliper: Nm): number => caliper / NM_PER_POINT;

const NM_PER_UM = 1000;

/**
 * The caliper of paper from its grammage, in g/m², and bulk, in cm³/g: micrometres are their product.
 * Source: apparent specific volume, ISO 534.
 */
export const caliperFromBulk = (grammage: number, bulk: number): Nm =>
  Math.round(grammage * bulk * NM_PER_UM);

/** The caliper of paper from its grammage, in g/m², and apparent density, in g/cm³ (ISO 534). */
export const caliperFromDensity = (grammage: number, density: number): Nm =>
  Math.round((grammage / density) * NM_PER_UM);
