import type { PocketPlace } from '../folding/pocket-place.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from './registry.ts';

/** The pockets of a plan. */
export function pocketsOf({ spec, dimensions }: Pick<Plan, 'spec' | 'dimensions'>): readonly PocketPlace[] {
  const style = styleOf(spec);
  return style.pocketsIn?.(dimensions, spec) ?? style.pockets;
}
