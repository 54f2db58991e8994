import type { Point } from '../geometry/plane.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Convention } from './convention.ts';
import type { Cut, Drawing, Score } from './drawing.ts';
import { drawsOutline } from './draws-outline.ts';
import type { Figure, FigurePath } from './figure.ts';
import { guideGroup, guideNote } from './guide-group.ts';
import { groupOf, inOrder, type LayerStyle, merge, usualLayer } from './layer-style.ts';
import { contourData } from './path-data.ts';
import { along, type Perforation, perforate, type Segment, usualPerforation } from './perforate.ts';
import { type Placement, place, rootSize } from './placement.ts';
import { scoreSideOf } from './score-side.ts';

/**
 * How layers are drawn where a convention says nothing: the Okabe-Ito palette, whose colours people who do
 * not see colour alike can tell apart, and line types that say the same again.
 * Source: Okabe & Ito, "Color Universal Design" (2002, revised 2008).
 */
const usual = Object.freeze({
  scoreValley: usualLayer('#CC79A7', 'dashed', 0),
  scoreMountain: usualLayer('#CC79A7', 'long-dashed dotted', 1),
  knockout: usualLayer('#D55E00', 'dotted', 10),
  cut: usualLayer('#009E73', 'continuous', 20),
});

/** A drawing in one user's convention: what is left is to write it down. */
export function applyConvention(drawing: Drawing, chosen: Convention = {}): Figure {
  const placement: Placement = {
    width: drawing.width,
    height: drawing.height,
    turned: drawing.turned,
    mirrored: chosen.sheetLies === 'outside-up',
    userUnit: chosen.userUnit ?? 'mm',
    rootUnit: chosen.rootUnit ?? 'mm',
  };
  const layers = chosen.layers ?? {};
  const scoreGroup = (name: 'scoreValley' | 'scoreMountain', scores: readonly Score[]) => {
    const both = { ...layers.score, order: usual[name].order };
    const own = merge(merge(usual[name], both), layers[name]);
    // what is cut dash by dash must not be drawn with dashes of its own
    const style: LayerStyle = chosen.score?.as === 'perforation' ? { ...own, lineType: 'continuous' } : own;
    const title = name === 'scoreValley' ? 'Score, valley' : 'Score, mountain';
    const id = name === 'scoreValley' ? 'score-valley' : 'score-mountain';
    return groupOf(
      id,
      title,
      style,
      placement,
      scores.flatMap((score) => scorePath(score, chosen, placement)),
    );
  };
  const cutGroup = (name: 'knockout' | 'cut', title: string, cuts: readonly Cut[]) =>
    groupOf(
      name,
      title,
      merge(usual[name], layers[name]),
      placement,
      cuts.flatMap((cut) => cutPath(cut, placement)),
    );
  const scoreGroups = inOrder([
    scoreGroup('scoreValley', drawing.valleys),
    scoreGroup('scoreMountain', drawing.mountains),
  ]);
  const scores = {
    order: layers.score?.order ?? 0,
    group: {
      id: 'score',
      title: 'Score',
      attributes: {},
      paths: [],
      groups: scoreGroups,
    },
  };
  return {
    ...rootSize(placement),
    title: drawing.title,
    description: [
      drawing.description,
      ...lying(placement),
      ...scoring(drawing, chosen),
      ...guideNote(chosen),
    ].join(' '),
    groups: inOrder([
      scoreGroups.length === 0 ? undefined : scores,
      guideGroup(drawing, chosen, placement),
      cutGroup('knockout', 'Knockout', drawing.knockouts),
      cutGroup('cut', 'Cut', cutsOf(drawing, chosen)),
    ]),
  };
}

/** From which face its scores are best made, where there are any. */
const scoring = ({ valleys, mountains }: Drawing, chosen: Convention): string[] =>
  valleys.length + mountains.length === 0 ? [] : [scoreSideOf(chosen).note];

/** How the drawing lies, where that is not as the folder is described. */
const lying = ({ turned, mirrored }: Placement): string[] => [
  ...(turned ? ['Drawn turned a quarter clockwise, as it lies under the tool.'] : []),
  ...(mirrored ? ['Drawn mirrored, for a sheet with its outside up.'] : []),
];

const cutsOf = (drawing: Drawing, { outline }: Convention): readonly Cut[] =>
  drawsOutline(drawing.wholeSheet, outline) ? [drawing.outline] : drawing.offcuts;

function scorePath(score: Score, { score: how }: Convention, placement: Placement): FigurePath[] {
  const points = pullBack(score, how?.inset ?? 0);
  const dashes: Perforation = {
    cut: how?.cut ?? usualPerforation.cut,
    tie: how?.tie ?? usualPerforation.tie,
  };
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  const segments: Segment[] = how?.as === 'perforation' ? perforate(points, dashes) : [[first, last]];
  const data = segments.flatMap(([from, to]) => {
    const [start, end] = [place(placement, from), place(placement, to)];
    return start === end ? [] : [`M ${start} L ${end}`];
  });
  return data.length === 0 ? [] : [{ id: score.id, data: data.join(' ') }];
}

/**
 * A score's points with its ends drawn back from the paper's edge, so that the tool does not catch there; at
 * most a third of the end stretch, so that no score vanishes.
 */
function pullBack({ points, atEdge }: Score, inset: Nm): readonly Point[] {
  const last = points.length - 1;
  return points.map((point, index) => {
    if (index === 0 && atEdge[0]) return shifted(point, points[1] ?? point, inset);
    if (index === last && atEdge[1]) return shifted(point, points[last - 1] ?? point, inset);
    return point;
  });
}

function shifted(from: Point, toward: Point, inset: Nm): Point {
  const length = Math.hypot(toward.x - from.x, toward.y - from.y);
  return length === 0 ? from : along(from, toward, Math.min(inset / length, 1 / 3));
}

function cutPath({ id, contours }: Cut, placement: Placement): FigurePath[] {
  const data = contours.map((contour) => contourData(contour, placement)).filter((text) => text !== '');
  return data.length === 0 ? [] : [{ id, data: data.join(' ') }];
}
