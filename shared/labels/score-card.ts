import { drawFinished } from '../drawing/draw-folder.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Folded } from '../folding/proof-of.ts';
import { goesIn } from '../guide/goes-in.ts';
import { onInchRule } from '../guide/positions.ts';
import { type BoardPass, type SlantedScore, scoringOf } from '../guide/scoring.ts';
import { extentText, fromEdge } from '../guide/scoring-section.ts';
import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeLength, inMm } from '../lengths/show-length.ts';
import { halfOpenScene } from '../views/half-open-scene.ts';
import { swappedNote } from '../views/laying.ts';
import { sentence } from '../views/part-names.ts';
import { largePrint, pictureOfScene } from '../views/scene-picture.ts';
import { stepHeadings } from '../views/step-scenes.ts';
import type { Label, LabelLine } from './labels.ts';
import type { LabelsWish } from './labels-query.ts';

/** Room for the picture in millimetres, and how many times it is enlarged. */
const pictures = {
  standard: { width: 70, height: 42, enlarged: 1 },
  large: { width: 70, height: 42, enlarged: largePrint },
} as const;

/** All that somebody who sits in a class must have before them to make a folder: its size, scores and folds. */
export function scoreCard(
  heading: string,
  folded: Folded,
  { print, shows }: { readonly print: LabelsWish['print']; readonly shows: 'outside' | 'inside' },
): Label {
  const { plan } = folded;
  const { enlarged, ...room } = pictures[print];
  const { measure } = plan.spec;
  const drawing = drawFinished(folded);
  const { passes, slanted } = scoringOf(drawing);
  const holds = goesIn(plan);
  const blank = [plan.blank.width, plan.blank.height].map((length) => describeLength(length, measure));
  return {
    heading,
    picture: { ...pictureOfScene(halfOpenScene(folded, room)), enlarged },
    lines: [
      { lead: 'Blank', text: `${blank.join(' by ')}, inside face up` },
      ...swappedNote(shows).map((text) => ({ lead: 'Paper', text })),
      ...passes.flatMap((pass) => scoreLines(pass, drawing, measure)),
      ...slantedLines(slanted, drawing, measure),
      ...stepHeadings(folded).map((text, index) => ({ lead: `${index + 1}.`, text })),
      ...(holds === undefined ? [] : [{ lead: 'To hold', text: holds }]),
      {
        lead: 'Mind',
        text: 'Blades are sharp: cut on a mat, along a metal rule, the other hand behind the blade.',
      },
    ],
  };
}

const edges = {
  left: 'Scores from the left edge',
  top: 'After a quarter turn to the left, from the top edge',
} as const;

const millimetres = (at: Nm): string => `${Math.round(inMm(at) * 10) / 10}`;

/** Positions from one home edge, in millimetres and to the nearest sixteenth of an inch, the reader's own measure first. */
function scoreLines(pass: BoardPass, drawing: Drawing, measure: Measure): readonly LabelLine[] {
  const { home, scores } = pass;
  if (!scores.every(({ whole }) => whole)) return partLines(pass, drawing, measure);
  const list = (write: (at: Nm) => string) => scores.map(({ at }) => write(at)).join(' · ');
  const metric = { unit: 'mm', text: list(millimetres) };
  const inch = { unit: 'in, to the nearest 1/16', text: list((at) => onInchRule(at).text) };
  const [own, other] = measure === 'inch' ? [inch, metric] : [metric, inch];
  return [
    { lead: `${edges[home]}, ${own.unit}:`, text: own.text },
    { lead: `${other.unit}:`, text: other.text },
  ];
}

/** Where scores run only part of the way, each with its fold and from where to where. */
function partLines({ home, scores }: BoardPass, drawing: Drawing, measure: Measure): readonly LabelLine[] {
  const length = home === 'left' ? drawing.height : drawing.width;
  return [
    { lead: `${edges[home]}:`, text: `each with its stretch from the ${fromEdge[home]}` },
    ...scores.map((score) => {
      const [metric, inch] = [`${millimetres(score.at)} mm`, `${onInchRule(score.at).text} in`];
      const [own, other] = measure === 'inch' ? [inch, metric] : [metric, inch];
      return {
        lead: `${own} (${other}):`,
        text: `${score.folds.join(', ')}, ${extentText(score, length, measure)}`,
      };
    }),
  ];
}

/** How far along both edges a score across a corner begins and ends. */
function legsOf({ from, to }: SlantedScore, { width, height }: Drawing): readonly [Nm, Nm] | undefined {
  const on = (value: Nm, side: Nm) => Math.min(Math.abs(value), Math.abs(value - side)) < 1000;
  const ends = [from, to];
  const upright = ends.find(({ x }) => on(x, width));
  const level = ends.find((point) => point !== upright && on(point.y, height));
  return upright && level && [Math.abs(level.x - upright.x), Math.abs(upright.y - level.y)];
}

/** Scores that run aslant; corners that are alike in one line. */
function slantedLines(
  slanted: readonly SlantedScore[],
  drawing: Drawing,
  measure: Measure,
): readonly LabelLine[] {
  const point = ({ x, y }: SlantedScore['from']) =>
    `${describeLength(x, measure)} from the left, ${describeLength(y, measure)} from the top`;
  const folds = new Map<string, string[]>();
  for (const score of slanted) {
    const legs = legsOf(score, drawing)?.map((leg) => describeLength(leg, measure));
    const text = legs
      ? `across the corner from ${legs[0]} along one edge to ${legs[1]} along the other`
      : `from ${point(score.from)}, to ${point(score.to)}`;
    folds.set(text, [...(folds.get(text) ?? []), score.fold]);
  }
  return [...folds].map(([text, names]) => ({ lead: `${sentence(names.join(', '))}:`, text }));
}
