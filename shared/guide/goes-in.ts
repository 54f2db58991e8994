import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { countedCards } from '../views/counted-cards.ts';

/** `2 cards with their envelopes for each pocket, 114 mm by 162 mm`; undefined where a spec tells no contents. */
export function goesIn({ load, spec }: Pick<Plan, 'load' | 'spec'>): string | undefined {
  if (!load) return undefined;
  const size = [load.item.width, load.item.height].map((length) => describeLength(length, spec.measure));
  const where = styleOf(spec).pockets.length > 1 ? ' for each pocket' : '';
  return `${countedCards({ load, spec })}${where}, ${size.join(' by ')}`;
}
