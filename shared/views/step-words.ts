import type { Step } from '../creases/fold-program.ts';
import { sentence, spokenName } from './part-names.ts';

/** What to do in a step, in one plain sentence. */
export function stepSentence(step: Step): string {
  if (step.kind === 'tuck') {
    const place = step.to === 'above' ? 'over' : 'under';
    return sentence(`slip the ${spokenName(step.panel)} ${place} the ${spokenName(step.of)}.`);
  }
  const way = step.direction === 'toward' ? 'toward you' : 'away from you';
  if (step.angle === 90) return sentence(`bend the ${step.name} ${way}, to a right angle.`);
  return step.direction === 'toward'
    ? sentence(`fold the ${step.name} over, toward you.`)
    : sentence(`fold the ${step.name} behind, away from you.`);
}
