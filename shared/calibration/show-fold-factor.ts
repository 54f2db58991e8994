import type { z } from 'zod';
import { foldFactorFrom } from '../paper/fold-allowance.ts';
import type { foldFactorReply, stripMeasurement } from './strip-spec.ts';

/** The fold factor of a measured strip, to two decimals: a ruler tells no more. */
export function showFoldFactor({
  length,
  measured,
  scores,
  caliper,
}: z.output<typeof stripMeasurement>): z.output<typeof foldFactorReply> {
  const factor = foldFactorFrom({ drawn: length, measured, scores, caliper });
  return { foldFactor: Math.round(factor * 100) / 100, believable: factor >= -0.2 && factor <= 1 };
}
