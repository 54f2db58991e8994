import type { Folded } from '../folding/proof-of.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { cuttingCaution } from './cutting-caution.ts';
import { drawCuts } from './draw-cuts.ts';
import type { Drawing } from './drawing.ts';
import { glueGuide } from './glue-guide.ts';
import { asksForGuide } from './guide-group.ts';
import { interruptScores } from './interrupt-scores.ts';
import { cornersOf, offcutsOf, outlineOf } from './outline.ts';
import { scoresOf } from './scores.ts';

/**
 * Everything to score and cut for a plan, from its crease pattern and its knockouts alone; and where it is glued, as it was
 * proved, if the plan's convention asks for the guide.
 */
export const drawFolder = (folded: Folded): Drawing => drawn(folded, folded.plan.spec.cutter?.kerf ?? 0);

/** The same as a maker measures it: without room for what the tool takes away. */
export const drawFinished = (folded: Folded): Drawing => drawn(folded, 0);

function drawn(folded: Folded, kerf: Nm): Drawing {
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
    ...(asksForGuide(plan.spec.convention) ? { guide: glueGuide(folded) } : {}),
  };
  if (!knockouts && kerf === 0) return plain;
  // slots keep off scores, and with nothing else to cut nothing is to be clipped for them
  const left =
    knockouts && knockouts.list.length > 0
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
    cuttingCaution,
  ].join(' ');
}
