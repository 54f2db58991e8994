import type { Folded } from '../folding/proof-of.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { drawCuts } from './draw-cuts.ts';
import type { Drawing } from './drawing.ts';
import { interruptScores } from './interrupt-scores.ts';
import { cornersOf, offcutsOf, outlineOf } from './outline.ts';
import { scoresOf } from './scores.ts';

/** Everything to score and cut for a plan, from its crease pattern and its knockouts alone. */
export function drawFolder(folded: Pick<Folded, 'plan' | 'pattern' | 'knockouts'>): Drawing {
  const { plan, pattern, knockouts } = folded;
  const { width, height } = plan.blank;
  const scores = scoresOf(pattern);
  const plain: Drawing = {
    title: titleOf(plan),
    description: descriptionOf(plan),
    width,
    height,
    ...scores,
    knockouts: [],
    outline: outlineOf(pattern),
    offcuts: offcutsOf(cornersOf(pattern), width, height),
    wholeSheet: plan.wholeSheet,
    turned: plan.arrangement.drawingTurned,
  };
  const kerf = plan.spec.cutter?.kerf ?? 0;
  if (!knockouts && kerf === 0) return plain;
  const left = knockouts
    ? {
        valleys: interruptScores(scores.valleys, knockouts.openings),
        mountains: interruptScores(scores.mountains, knockouts.openings),
      }
    : {};
  return drawCuts({ ...plain, ...left }, knockouts?.paper, kerf, plan.spec.convention?.outline);
}

function titleOf(plan: Plan): string {
  const { width, height } = plan.closed;
  const { measure } = plan.spec;
  return `${styleOf(plan.spec).title}, closed ${describeLength(width, measure)} by ${describeLength(height, measure)}`;
}

function descriptionOf(plan: Plan): string {
  const { measure } = plan.spec;
  const { width, height } = plan.blank;
  return [
    `Blank ${describeLength(width, measure)} by ${describeLength(height, measure)}.`,
    'Valley and mountain are named with the inside face up.',
    'Measure a first piece before you cut a good sheet.',
    'Blades and lasers hurt: follow the instructions of the machine and of the material, and never leave a laser alone while it runs.',
  ].join(' ');
}
