import type { Plan } from '../solver/plan.ts';

/** `1 card with its envelope`, `3 cards`: what goes into each pocket. */
export function countedCards({ load, spec }: Pick<Plan, 'load' | 'spec'>): string {
  const count = load?.perPocket ?? 1;
  const alone = count === 1 ? 'card' : 'cards';
  const covered = count === 1 ? 'card with its envelope' : 'cards with their envelopes';
  return `${count} ${spec.contents?.envelope === undefined ? alone : covered}`;
}
