import type { Nm } from '../lengths/nanometres.ts';
import { styleOf } from '../styles/registry.ts';
import type { Plan } from './plan.ts';

/** Thickness of everything that lies in the closed folder, in nanometres; 0 without contents. */
export const stackOf = ({ spec, load }: Pick<Plan, 'spec' | 'load'>): Nm =>
  load ? load.set * load.perPocket * styleOf(spec).pockets.length : 0;
