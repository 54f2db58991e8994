import type { CreasePattern } from '../creases/crease-pattern.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import type { Drawing } from './drawing.ts';
import { offcutsOf, outlineOf } from './outline.ts';
import { scoresOf } from './scores.ts';

/** Everything to score and cut for a plan, from its crease pattern alone. */
export function drawFolder(plan: Plan, pattern: CreasePattern): Drawing {
  const { width, height } = plan.blank;
  const outline = outlineOf(pattern);
  return {
    title: titleOf(plan),
    description: descriptionOf(plan),
    width,
    height,
    ...scoresOf(pattern),
    knockouts: [],
    outline,
    offcuts: offcutsOf(outline, width, height),
    wholeSheet: plan.wholeSheet,
    turned: plan.arrangement.drawingTurned,
  };
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
