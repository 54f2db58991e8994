import { mm, type Nm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import { depthOf } from '../solver/depth-of.ts';
import { pointerTo } from '../solver/given.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import type { Warning } from './warning.ts';

/** Caliper bands that fold well; common practice. */
const floppy = mm(0.15);
const stiff = mm(0.4);
const tooStiff = mm(0.5);
/** Scores nearer than this to each other are hard to make; common practice of cover printers. */
const closeScores = mm(4);

/** What the paper and the grid make hard. */
export function paperWarnings(plan: Plan): readonly Warning[] {
  const { sheet } = plan.arrangement;
  return [
    ...assumed(plan),
    ...band(sheet.paper.caliper, sheet.path ?? '/stock', plan),
    ...scoresApart(plan),
    ...leftOn(plan),
    ...slivers(plan),
    ...offGrid(plan),
  ];
}

function assumed({ arrangement: { sheet } }: Plan): Warning[] {
  if (sheet.paper.from !== 'default') return [];
  return [
    {
      code: 'caliper-assumed',
      path: `${sheet.path ?? '/stock'}/caliper`,
      message: sheet.paper.why,
      remedy: 'give the stock’s caliper',
    },
  ];
}

function band(caliper: Nm, path: string, { spec }: Plan): Warning[] {
  const { measure } = spec;
  const paper = `paper of ${describeLength(caliper, measure)}`;
  const good = `take card of ${describeLength(mm(0.2), measure)} to ${describeLength(stiff, measure)}`;
  if (caliper < floppy)
    return [
      {
        code: 'paper-thin',
        path,
        message: `${paper} makes a floppy ${styleOf(spec).words.piece}`,
        remedy: good,
      },
    ];
  if (caliper > tooStiff)
    return [
      {
        code: 'paper-too-stiff',
        path,
        message: `${paper} is board: single scores crack in it, and flaps and hems will not lie flat`,
        remedy: good,
      },
    ];
  if (caliper > stiff)
    return [
      {
        code: 'paper-stiff',
        path,
        message: `${paper} may crack along single scores`,
        remedy: `${good}, or try a wider score on a scrap first`,
      },
    ];
  return [];
}

function scoresApart({ dimensions, spec }: Plan): Warning[] {
  const holder = depthOf(styleOf(spec), dimensions);
  if (!holder || holder.value === 0 || holder.value >= closeScores) return [];
  return [
    {
      code: 'scores-close',
      path: pointerTo(holder.name),
      message: `the two ${holder.title} scores are only ${describeLength(holder.value, spec.measure)} apart`,
      remedy: 'score lightly, or use thinner paper',
    },
  ];
}

function leftOn({ wholeSheet, arrangement, blank, spec }: Plan): Warning[] {
  const sheet = arrangement.rooms[0];
  if (!wholeSheet || !sheet) return [];
  const sides = [
    ['right', sheet.width - blank.width],
    ['bottom', sheet.height - blank.height],
  ] as const;
  return sides
    .filter(([, spare]) => spare > 0)
    .map(([edge, spare]) => ({
      code: 'sheet-larger',
      path: sheet.path,
      message: `the sheet is ${describeLength(spare, spec.measure)} larger than the blank; that is too little to trim and stays on at the ${edge}`,
    }));
}

/** Strips narrower than this are hard to cut off; common practice. */
const narrowest = mm(3);

function slivers({ wholeSheet, arrangement, blank, spec }: Plan): Warning[] {
  const sheet = arrangement.rooms[0];
  if (wholeSheet || !sheet) return [];
  return [sheet.width - blank.width, sheet.height - blank.height]
    .filter((spare) => spare > 0 && spare < narrowest)
    .map((spare) => ({
      code: 'sliver-to-trim',
      path: '/grid',
      message: `a strip of only ${describeLength(spare, spec.measure)} is left to trim off`,
      remedy: 'leave it on, or give no grid so that the hems and the seam take it',
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
