import { withOwnUnits } from '../lengths/length-schema.ts';
import { cutter } from '../spec/common.ts';

/** A cutter to keep by name: what a spec's `cutter` holds, each length with its unit. */
export const keptCutter = withOwnUnits(cutter).meta({ id: 'KeptCutter', title: 'A cutter to keep' });
