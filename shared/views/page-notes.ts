import type { Folded } from '../folding/proof-of.ts';
import { describeEstimate, describeLength } from '../lengths/show-length.ts';
import { styleOf } from '../styles/registry.ts';
import { sentence } from './part-names.ts';

/** How large the finished piece is. */
export function sizeOf({ plan }: Folded): string {
  const { measure } = plan.spec;
  const { width, height, thickness } = plan.closed;
  const ready = sentence(styleOf(plan.spec).words.ready);
  return `${ready} ${describeLength(width, measure)} wide, ${describeLength(height, measure)} high and ${describeEstimate(thickness, measure)} thick.`;
}

const larger: Readonly<Record<number, string>> = {
  1: 'real size',
  2: 'twice real size',
  3: 'three times real size',
};

/** How large a picture is, from page millimetres for one real millimetre. */
export const scaleOf = (ratio: number): string =>
  `Drawn at ${larger[ratio] ?? `${Math.round(ratio * 1000) / 10} % of real size`}.`;
