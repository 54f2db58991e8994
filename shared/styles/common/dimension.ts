import { length } from '../../lengths/length-schema.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import type { Dimensions } from '../style.ts';

/** A dimension that a spec may fix. */
export const dimension = (description: string) => length.optional().meta({ description });

/** Said of the `dimensions` of every spec. */
export const dimensionsText = 'Dimensions to keep exactly; the solver finds the others.';

/** One dimension by name. */
export function at(dimensions: Dimensions, name: string): Nm {
  const value = dimensions[name];
  if (value === undefined) throw new Error(`there is no dimension ${name}`);
  return value;
}
