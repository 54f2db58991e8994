import type { Measure } from '../lengths/length-schema.ts';
import { inch, mm, type Nm } from '../lengths/nanometres.ts';

/** The grid that scores fall on where the spec does not say: 1/16 in or 1 mm; common practice. */
export function gridOf({
  grid,
  measure,
}: {
  readonly grid?: Nm | 'none' | undefined;
  readonly measure: Measure;
}): Nm {
  if (grid === 'none') return 0;
  return grid ?? (measure === 'inch' ? inch(1 / 16) : mm(1));
}
