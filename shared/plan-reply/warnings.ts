import type { CreasePattern } from '../creases/crease-pattern.ts';
import { offcutsOf, outlineOf } from '../drawing/outline.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { ClosedLayers } from '../folding/thickness.ts';
import { mm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { extent } from '../solver/sheets.ts';
import { styleOf } from '../styles/registry.ts';

/** Something that a maker should know before cutting; the folder can be made all the same. */
export interface Warning {
  readonly code: string;
  readonly path: string;
  readonly message: string;
  readonly remedy?: string;
}

/** Caliper bands that fold well; common practice. */
const floppy = mm(0.15);
const stiff = mm(0.4);
/** Scores nearer than this to each other are hard to make; common practice of cover printers. */
const closeScores = mm(4);

/** All warnings of a plan, in the order in which a maker meets them. */
export function warningsOf({ plan, pattern, proof }: Folded): readonly Warning[] {
  return [
    ...paper(plan),
    ...contents(plan),
    ...scores(plan),
    ...wedge(plan, proof.layers),
    ...leftOn(plan),
    ...offGrid(plan),
    ...drawing(plan, pattern),
  ];
}

/** The covers lie further apart at the mouths than the spine does: worth a word from the thickness of one card. */
function wedge(plan: Plan, layers: ClosedLayers): Warning[] {
  const { caliper } = plan.arrangement.sheet.paper;
  const stack = plan.load ? plan.load.set * plan.load.perPocket * styleOf(plan.spec).pockets.length : 0;
  const most = stack + (layers.most - 1) * caliper;
  const spine = plan.dimensions.spine ?? 0;
  if (most - spine <= caliper) return [];
  return [
    {
      code: 'closes-to-a-wedge',
      path: '/dimensions/spine',
      message: `where hems and seam meet, ${layers.most} layers lie on each other: there the closed folder is ${describeLength(most - spine, plan.spec.measure)} thicker than its spine`,
      remedy: 'a wider spine, or mitred corners and a narrower overlap',
    },
  ];
}

/** What the convention makes of the drawing that a maker may not expect. */
function drawing({ spec, wholeSheet }: Plan, pattern: CreasePattern): Warning[] {
  const { layers, outline = 'auto' } = spec.convention ?? {};
  const corners = offcutsOf(outlineOf(pattern), ...extentOf(pattern));
  const { cut } = layers ?? {};
  return [
    ...(cut?.paint === 'fill' && cut.order === undefined && cut.off !== true
      ? [
          {
            code: 'filled-cut-covers',
            path: '/convention/layers/cut/paint',
            message: 'the filled cut is written last, so that a preview shows nothing but its area',
            remedy:
              'give the cut layer an order below the scores if your program does not cut by the file’s order',
          },
        ]
      : []),
    ...(corners.length > 0 && (outline === 'never' || (outline === 'auto' && wholeSheet))
      ? [
          {
            code: 'cuts-at-the-edge',
            path: '/corners',
            message: 'the corners are cut off along the sheet’s own edge, as far out as the tool must reach',
            remedy: 'leave the cut layer off and cut the corners by hand, or fold them',
          },
        ]
      : []),
  ];
}

const extentOf = ({ vertices }: CreasePattern): [number, number] => [
  Math.max(...vertices.map(({ x }) => x)),
  Math.max(...vertices.map(({ y }) => y)),
];

function paper({ arrangement: { sheet } }: Plan): Warning[] {
  const path = sheet.path ?? '/stock';
  const { caliper, from, why } = sheet.paper;
  return [
    ...(from === 'default'
      ? [
          {
            code: 'caliper-assumed',
            path: `${path}/caliper`,
            message: why,
            remedy: 'give the stock’s caliper',
          },
        ]
      : []),
    ...(caliper < floppy
      ? [
          {
            code: 'paper-thin',
            path,
            message: `paper of ${caliper / 1e6} mm makes a floppy folder`,
            remedy: 'take card of 0.2 mm to 0.4 mm',
          },
        ]
      : []),
    ...(caliper > stiff
      ? [
          {
            code: 'paper-stiff',
            path,
            message: `paper of ${caliper / 1e6} mm cracks along single scores`,
            remedy: 'take card of 0.2 mm to 0.4 mm, or test a wide score first',
          },
        ]
      : []),
  ];
}

function contents({ spec, load, dimensions }: Plan): Warning[] {
  if (!spec.contents || !load) return [];
  const { item, envelope } = spec.contents;
  const card = extent(item);
  const warnings: Warning[] = [];
  if (envelope) {
    const cover = extent(envelope);
    const fits =
      Math.min(card.width, card.height) <= Math.min(cover.width, cover.height) &&
      Math.max(card.width, card.height) <= Math.max(cover.width, cover.height);
    if (!fits)
      warnings.push({
        code: 'card-larger-than-envelope',
        path: '/contents/envelope',
        message: 'the card is larger than its envelope',
        remedy: 'check both sizes; the pocket was sized for the envelope',
      });
  }
  if (load.spineHolds !== undefined && load.spineHolds > load.perPocket) {
    const spine = describeLength(dimensions.spine ?? 0, spec.measure);
    warnings.push({
      code: 'spine-roomy',
      path: '/dimensions/spine',
      message: `a spine of ${spine} would hold ${load.spineHolds} sets in each pocket`,
    });
  }
  return warnings;
}

function scores({ dimensions, spec }: Plan): Warning[] {
  const spine = dimensions.spine;
  return spine !== undefined && spine < closeScores
    ? [
        {
          code: 'scores-close',
          path: '/dimensions/spine',
          message: `the two spine scores are only ${describeLength(spine, spec.measure)} apart`,
          remedy: 'score lightly, or use thinner paper',
        },
      ]
    : [];
}

function leftOn({ wholeSheet, arrangement, blank, spec }: Plan): Warning[] {
  const sheet = arrangement.rooms[0];
  if (!wholeSheet || !sheet) return [];
  const sides = [
    ['wider', 'right', sheet.width - blank.width],
    ['higher', 'bottom', sheet.height - blank.height],
  ] as const;
  return sides
    .filter(([, , spare]) => spare > 0)
    .map(([more, edge, spare]) => ({
      code: 'sheet-larger',
      path: sheet.path,
      message: `the sheet is ${describeLength(spare, spec.measure)} ${more} than the blank; so little stays on at its ${edge} edge`,
    }));
}

function offGrid({ settled, spec }: Plan): Warning[] {
  const titles = new Map(styleOf(spec).dimensionNames.map(({ name, title }) => [name, title]));
  return settled
    .filter((one) => !one.onGrid && one.decidedBy !== 'given')
    .map((one) => ({
      code: 'off-grid',
      path: '/grid',
      message: `the ${titles.get(one.name) ?? one.name} of ${describeLength(one.value, spec.measure)} is no whole number of grid steps: the bounds leave no step free`,
      remedy: 'a finer grid, or a little more paper',
    }));
}
