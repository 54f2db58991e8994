import type { CreasePattern } from '../creases/crease-pattern.ts';
import { cornersOf, offcutsOf } from '../drawing/outline.ts';
import { usualPerforation } from '../drawing/perforate.ts';
import { mm } from '../lengths/nanometres.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import type { Warning } from './warning.ts';

/** What the convention makes of the drawing that a maker may not expect. */
export const drawingWarnings = (plan: Plan, pattern: CreasePattern): readonly Warning[] => [
  ...weakPerforation(plan),
  ...(plan.spec.convention?.layers?.cut?.off === true
    ? []
    : [...filledCut(plan), ...atTheEdge(plan, pattern)]),
];

/** A fold that must last keeps at least so much of its paper, and ties at least so long; common practice. */
const leastPaper = 0.3;
const leastTie = mm(0.5);

function weakPerforation({ spec }: Plan): Warning[] {
  const { as, cut = usualPerforation.cut, tie = usualPerforation.tie } = spec.convention?.score ?? {};
  if (as !== 'perforation' || (tie >= leastTie && tie / (cut + tie) >= leastPaper)) return [];
  return [
    {
      code: 'perforation-weak',
      path: '/convention/score',
      message: `only ${Math.round((100 * tie) / (cut + tie))} % of the paper is left along a perforated fold: it may tear`,
      remedy: 'ties about as long as the cuts, and none under 0.5 mm',
    },
  ];
}

function filledCut({ spec }: Plan): Warning[] {
  const cut = spec.convention?.layers?.cut;
  if (cut?.paint !== 'fill' || cut.order !== undefined) return [];
  return [
    {
      code: 'filled-cut-covers',
      path: '/convention/layers/cut/paint',
      message: 'the filled cut is written last, so that a preview shows nothing but its area',
      remedy: 'give the cut layer an order below the scores if your program does not cut by the file’s order',
    },
  ];
}

/** Cuts that run along the sheet's own edge, as far out as the tool must reach. */
function atTheEdge({ spec, wholeSheet, arrangement, blank }: Plan, pattern: CreasePattern): Warning[] {
  const sheet = arrangement.rooms[0] ?? blank;
  const whole = spec.convention?.outline ?? 'auto';
  const onlyCorners = whole === 'never' || (whole === 'auto' && wholeSheet);
  const offcuts = offcutsOf(cornersOf(pattern), blank.width, blank.height);
  const along = onlyCorners
    ? offcuts.length > 0
    : blank.width === sheet.width || blank.height === sheet.height;
  const cornersAlone = offcuts.every(({ id }) => id.startsWith('corner'));
  const what = cornersAlone ? 'the corners are' : 'what comes off beside the blank is';
  if (!along) return [];
  return [
    {
      code: 'cuts-at-the-edge',
      path: (onlyCorners ? styleOf(spec).cornersAt : undefined) ?? '/convention/outline',
      message: `${onlyCorners ? what : 'the outline is'} cut along the sheet’s own edge, as far out as the tool must reach`,
      remedy:
        'lay the sheet so that the tool reaches over its edge, or switch the cut layer off and cut by hand',
    },
  ];
}
