import { drawFinished } from '../drawing/draw-folder.ts';
import type { Folded } from '../folding/proof-of.ts';
import { goesIn } from '../guide/goes-in.ts';
import { onInchRule } from '../guide/positions.ts';
import { type BoardPass, scoringOf } from '../guide/scoring.ts';
import { describeLength, inMm } from '../lengths/show-length.ts';
import { halfOpenScene } from '../views/half-open-scene.ts';
import { largePrint, pictureOfScene } from '../views/scene-picture.ts';
import { stepScenes } from '../views/step-scenes.ts';
import type { Label, LabelLine } from './labels.ts';
import type { LabelsWish } from './labels-query.ts';

/** Room for the picture in millimetres, and how many times it is enlarged. */
const pictures = {
  standard: { width: 70, height: 42, enlarged: 1 },
  large: { width: 70, height: 42, enlarged: largePrint },
} as const;

/** Stands behind a score that does not run from edge to edge. */
const partly = '*';

/** All that somebody who sits in a class must have before them to make a folder: its size, scores and folds. */
export function scoreCard(heading: string, folded: Folded, print: LabelsWish['print']): Label {
  const { plan } = folded;
  const { enlarged, ...room } = pictures[print];
  const { measure } = plan.spec;
  const drawing = drawFinished(folded);
  const { passes, slanted } = scoringOf(drawing);
  const holds = goesIn(plan);
  const isPartial = passes.some(({ scores }) => scores.some(({ whole }) => !whole));
  const blank = [plan.blank.width, plan.blank.height].map((length) => describeLength(length, measure));
  return {
    heading,
    picture: { ...pictureOfScene(halfOpenScene(folded, room)), enlarged },
    lines: [
      { lead: 'Blank', text: `${blank.join(' by ')}, inside face up` },
      ...passes.flatMap(scoreLines),
      ...(isPartial
        ? [{ text: `${partly} only part of the way: the maker’s sheet tells from where to where.` }]
        : []),
      ...(slanted.length === 0
        ? []
        : [
            {
              lead: 'Slanted',
              text: `${slanted.length} more ${slanted.length === 1 ? 'score' : 'scores'}: see the maker’s sheet.`,
            },
          ]),
      ...stepScenes(folded, { width: 1, height: 1 }).map((scene, index) => ({
        lead: `${index + 1}.`,
        text: scene.heading,
      })),
      ...(holds === undefined ? [] : [{ lead: 'To hold', text: holds }]),
      {
        lead: 'Mind',
        text: 'Blades are sharp: cut on a mat, along a metal rule, the other hand behind the blade.',
      },
    ],
  };
}

/** Positions from one home edge, in millimetres and to the nearest sixteenth of an inch. */
function scoreLines({ home, scores }: BoardPass): readonly LabelLine[] {
  const edge =
    home === 'left' ? 'Scores from the left edge' : 'After a quarter turn to the left, from the top edge';
  const mark = (index: number) => (scores[index]?.whole ? '' : partly);
  const list = (write: (at: number) => string) =>
    scores.map(({ at }, index) => `${write(at)}${mark(index)}`).join(' · ');
  return [
    { lead: `${edge}, mm:`, text: list((at) => `${Math.round(inMm(at) * 10) / 10}`) },
    { lead: 'in, to the nearest 1/16:', text: list((at) => onInchRule(at).text) },
  ];
}
