import { convention } from '../drawing/convention.ts';
import { withOwnUnits } from '../lengths/length-schema.ts';

/** A convention to keep by name: what a spec's `convention` holds, each length with its unit. */
export const keptConvention = withOwnUnits(convention).meta({
  id: 'KeptConvention',
  title: 'A convention to keep',
});
