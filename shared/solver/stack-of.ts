import { raisedOnPockets } from '../knockouts/raised.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { styleOf } from '../styles/registry.ts';
import type { Plan } from './plan.ts';

/** Thickness of everything that lies in the closed folder, in nanometres: its contents, and frames raised on pockets. */
export function stackOf({ spec, load }: Pick<Plan, 'spec' | 'load'>): Nm {
  const { pockets } = styleOf(spec);
  const contents = load ? load.set * load.perPocket * pockets.length : 0;
  return contents + raisedOnPockets(spec.knockouts, pockets);
}
