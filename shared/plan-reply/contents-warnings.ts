import { spineFor } from '../contents/stack.ts';
import type { ClosedLayers } from '../folding/thickness.ts';
import { mm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
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
  const spine = describeLength(styleOf(spec).spine(dimensions), spec.measure);
  return [
    {
      code: 'spine-roomy',
      path: '/dimensions/spine',
      message: `a spine of ${spine} would hold ${load.spineHolds} sets in each pocket`,
    },
  ];
}

/** Where hems and seam meet, more layers lie on each other than beside the spine. */
function wedge(plan: Plan, layers: ClosedLayers): Warning[] {
  const { spec, dimensions, arrangement } = plan;
  const style = styleOf(spec);
  const { caliper } = arrangement.sheet.paper;
  const most = spineFor(stackOf(plan), { layers: layers.most, caliper, ease: 0 });
  const excess = most - style.spine(dimensions);
  if (excess <= gapes) return [];
  return [
    {
      code: 'closes-to-a-wedge',
      path: '/dimensions/spine',
      message: `${layers.most} layers of paper lie on each other where hems and seam meet: there the closed folder is ${describeLength(excess, spec.measure)} thicker than at its spine`,
      remedy: `thinner paper, mitred corners, or a spine of ${describeLength(most, spec.measure)} if it should close evenly`,
    },
  ];
}
