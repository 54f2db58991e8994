import type { Drawing } from '../drawing/drawing.ts';
import type { Measure } from '../lengths/length-schema.ts';
import { describeLength } from '../lengths/show-length.ts';
import { sentence } from '../views/part-names.ts';
import type { Block, GuideTable, Section } from './guide.ts';
import { inMillimetres, offText, onInchRule, onMetricRule } from './positions.ts';
import { type BoardPass, type BoardScore, type SlantedScore, scoringOf } from './scoring.ts';

const lay = {
  left: 'Lay the sheet with its inside face up and its left edge against the home edge of the scoring board.',
  top: 'Give the sheet a quarter turn to the left: now its top edge lies against the home edge, still with the inside face up.',
} as const;

/** The edge from which stretches are measured, while an edge lies against the home edge. */
export const fromEdge = { left: 'top edge', top: 'left edge, now nearest to you' } as const;

/** Where each score is pressed by hand, in the order in which the sheet is turned. */
export function scoringSection(drawing: Drawing, measure: Measure): Section {
  const { passes, slanted } = scoringOf(drawing);
  return {
    id: 'scores',
    title: 'Scores from one home edge',
    blocks: [
      {
        kind: 'text',
        text: 'All positions are measured from the home edge, never from the score before, so that errors do not add up. The columns “on a rule” give the nearest mark and how far it lies beyond (+) or before (−) the true position.',
      },
      ...passes.flatMap((pass, index): Block[] => [
        { kind: 'text', text: `${index + 1}. ${lay[pass.home]}` },
        passTable(pass, drawing, measure, index + 1),
      ]),
      ...slantedBlocks(slanted, measure),
      {
        kind: 'text',
        text: 'A rounded position moves the fold by as much; where two scores are rounded apart, what lies between them changes by the sum.',
      },
    ],
  };
}

/** What is told in millimetres and in inches, the reader's own measure first. */
const ownFirst = <Item>(both: readonly Item[], measure: Measure): readonly Item[] =>
  measure === 'inch' ? both.toReversed() : both;

function passTable(pass: BoardPass, drawing: Drawing, measure: Measure, number: number): GuideTable {
  const length = pass.home === 'left' ? drawing.height : drawing.width;
  const rows = pass.scores.map((score) => {
    const [inch, metric] = [onInchRule(score.at), onMetricRule(score.at)];
    const onRules = [
      [metric.text, offText(metric.off)],
      [inch.text, offText(inch.off)],
    ];
    return [
      inMillimetres(score.at),
      ...ownFirst(onRules, measure).flat(),
      extentText(score, length, measure),
      score.folds.join(', '),
    ];
  });
  return {
    kind: 'table',
    caption: `Pass ${number}: from the ${pass.home} edge`,
    head: [
      'Exact, mm',
      ...ownFirst(['On a rule, mm', 'On a rule, in'], measure).flatMap((title) => [title, 'off by']),
      `From where to where, from the ${fromEdge[pass.home]}`,
      'For the fold of',
    ],
    rows,
  };
}

/** From where to where a score runs, from the edge that the table's head names. */
export function extentText({ whole, stretches }: BoardScore, length: number, measure: Measure): string {
  if (whole) return 'edge to edge';
  return stretches
    .map(([from, to]) => {
      const start = from < 1000 ? 'the edge' : describeLength(from, measure);
      const end = to > length - 1000 ? 'the other edge' : describeLength(to, measure);
      return `${start} to ${end}`;
    })
    .join('; ');
}

function slantedBlocks(slanted: readonly SlantedScore[], measure: Measure): readonly Block[] {
  if (slanted.length === 0) return [];
  const point = ({ x, y }: { x: number; y: number }) =>
    `${describeLength(x, measure)} from the left and ${describeLength(y, measure)} from the top`;
  return [
    {
      kind: 'text',
      text: 'The slanted scores: mark both ends lightly on the sheet, lay it so that both marks lie in one groove or along a metal rule, and press.',
    },
    {
      kind: 'list',
      items: slanted.map(({ from, to, fold }) => `${sentence(fold)}: from ${point(from)} to ${point(to)}.`),
    },
  ];
}
