import type { FillStep, FoldStep, GlueStep, LockStep, Step, TuckStep } from '../creases/fold-program.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { countedCards } from './counted-cards.ts';
import { listed, type PanelNames, sentence, titleOf } from './part-names.ts';

/** What to do in a step, in one or two plain sentences. */
export function stepSentence(step: Step, plan: Plan, names: PanelNames): string {
  switch (step.kind) {
    case 'fold':
      return sentence(foldWords(step));
    case 'tuck':
      return sentence(tuckWords(step, names));
    case 'glue':
      return [sentence(glueWords(step, plan)), step.keepFree ?? ''].join(' ').trim();
    case 'lock':
      return sentence(lockWords(step));
    case 'fill':
      return [sentence(fillWords(step, plan)), styleOf(plan.spec).words.filled ?? ''].join(' ').trim();
    case 'stand':
      return step.task;
  }
}

function foldWords({ name, direction, angle, eased }: FoldStep): string {
  const way = direction === 'toward' ? 'toward you' : 'away from you';
  if (eased) {
    const it = name.endsWith('s') ? 'them' : 'it';
    return `crease the ${name}: bend ${it} ${way}, and lay ${it} flat again.`;
  }
  if (angle === 90) return `bend the ${name} ${way}, to a right angle.`;
  return direction === 'toward' ? `fold the ${name} over, ${way}.` : `fold the ${name} behind, ${way}.`;
}

const tuckWords = ({ panel, to, of }: TuckStep, names: PanelNames): string =>
  `slip the ${titleOf(names, panel)} ${to === 'above' ? 'over' : 'under'} the ${titleOf(names, of)}.`;

function glueWords({ holds, lines, width, inset }: GlueStep, { spec }: Plan): string {
  const [wide, inside] = [width, inset].map((length) => describeLength(length, spec.measure));
  const line = ['a line', 'two lines'][lines - 1] ?? `${lines} lines`;
  return `glue the ${holds} down: ${line} ${wide} wide, ${inside} inside ${holds.endsWith('s') ? 'their' : 'its'} edges.`;
}

const lockWords = ({ holds, locks }: LockStep): string =>
  locks.length === 1
    ? `push the tongue of the ${holds} through its slot, one shoulder after the other, and lay it flat.`
    : `push the tongues of the ${holds} through their slots, one shoulder after the other, and lay them flat.`;

function fillWords({ pockets, task }: FillStep, plan: Plan): string {
  const cards = countedCards(plan);
  if (task !== undefined) return task.replace('{sets}', cards);
  const places = pockets.map(
    (pocket, index) => `${index === 0 ? cards : (plan.load?.perPocket ?? 1)} into the ${pocket}`,
  );
  return `slide ${listed(places)}, through ${pockets.length === 1 ? 'its open end' : 'their open ends'}.`;
}
