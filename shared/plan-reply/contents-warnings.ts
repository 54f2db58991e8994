import { spineFor } from '../contents/stack.ts';
import type { ClosedLayers } from '../folding/thickness.ts';
import { mm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import { depthOf } from '../solver/depth-of.ts';
import { pointerTo } from '../solver/given.ts';
import type { Plan } from '../solver/plan.ts';
import { extent } from '../solver/sheets.ts';
import { stackOf } from '../solver/stack-of.ts';
import { styleOf } from '../styles/registry.ts';
import type { Warning } from './warning.ts';

/** A folder gapes by less than this at its mouths and nobody minds; common practice. */
const gapes = mm(2);

/** What the contents and the folder around them do not agree on. */
export const contentsWarnings = (plan: Plan, layers: ClosedLayers): readonly Warning[] => [
  ...cardInEnvelope(plan),
  ...spareSpine(plan),
  ...wedge(plan, layers),
];

function cardInEnvelope({ spec }: Plan): Warning[] {
  if (!spec.contents?.envelope) return [];
  const [card, cover] = [extent(spec.contents.item), extent(spec.contents.envelope)];
  const fits =
    Math.min(card.width, card.height) <= Math.min(cover.width, cover.height) &&
    Math.max(card.width, card.height) <= Math.max(cover.width, cover.height);
  if (fits) return [];
  return [
    {
      code: 'card-larger-than-envelope',
      path: '/contents/envelope',
      message: 'the card is larger than its envelope',
      remedy: 'check both sizes; the pocket was sized for the envelope',
    },
  ];
}

function spareSpine({ spec, load, dimensions }: Plan): Warning[] {
  if (load?.spineHolds === undefined || load.spineHolds <= load.perPocket) return [];
  const holder = depthOf(styleOf(spec), dimensions);
  if (!holder) return [];
  return [
    {
      code: 'spine-roomy',
      path: pointerTo(holder.name),
      message: `a ${holder.title} of ${describeLength(holder.value, spec.measure)} would hold ${load.spineHolds} sets in each pocket`,
    },
  ];
}

/** Where most layers meet, more lie on each other than beside the spine. */
function wedge(plan: Plan, layers: ClosedLayers): Warning[] {
  const { spec, dimensions, arrangement } = plan;
  const style = styleOf(spec);
  const holder = depthOf(style, dimensions);
  const { thickest } = style.words;
  if (!holder || !thickest) return [];
  const { caliper } = arrangement.sheet.paper;
  const most = spineFor(stackOf(plan), { layers: layers.most, caliper, ease: 0 });
  const excess = most - holder.value;
  if (excess <= gapes) return [];
  const { title, name } = holder;
  const remedies = ['thinner paper', ...(thickest.remedy === undefined ? [] : [thickest.remedy])];
  return [
    {
      code: 'closes-to-a-wedge',
      path: pointerTo(name),
      message: `${layers.most} layers of paper lie on each other ${thickest.where}: there the ${style.words.ready} ${style.words.piece} is ${describeLength(excess, spec.measure)} thicker than at its ${title}`,
      remedy: `${remedies.join(', ')}, or a ${title} of ${describeLength(most, spec.measure)} if it should close evenly`,
    },
  ];
}
