import type { Measure } from './length-schema.ts';
import { inch, mm, type Nm } from './nanometres.ts';

/** A length rounded up to what is easily measured off a roll: 1/4 in, or 5 mm. */
export function easilyMeasured(length: Nm, measure: Measure): Nm {
  const step = measure === 'inch' ? inch(1 / 4) : mm(5);
  return Math.ceil(length / step) * step;
}
