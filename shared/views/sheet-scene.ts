import { isCrease } from '../creases/crease-pattern.ts';
import { flatFaces } from '../folding/flat-faces.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { inInches, inMm } from '../lengths/show-length.ts';
import { edgeLeft } from './cut-open.ts';
import { findingMarks } from './finding-marks.ts';
import { type Room, ratioFor } from './fit.ts';
import { type FlatLook, flatLook } from './flat-look.ts';
import { group } from './flat-scene.ts';
import { marksOfFaces } from './joined-faces.ts';
import { measureBelow, measureBeside, measureRoom } from './measure-lines.ts';
import { moveMarks } from './move-marks.ts';
import { paint } from './painted.ts';
import type { LineMark, Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { printUps } from './sheet-prints.ts';
import { plateOf, textSize } from './text-block.ts';
import { regionsOf, seenOf } from './visible.ts';

/** The open sheet with its inside face up: every part by name, every score by its kind, and how far apart they are. */
export function sheetScene(folded: Folded, room: Room): Scene {
  const { plan, pattern, proof, knockouts } = folded;
  const open = proof.forms[0];
  if (!open) throw new Error('a program without steps has no open sheet');
  const space = { width: room.width - 2 * measureRoom, height: room.height - measureRoom };
  const look = flatLook(pattern, open, 'inside', ratioFor(plan.blank.width, plan.blank.height, space));
  const seen = seenOf(paint(pattern, open, look, printUps(plan), undefined, knockouts));
  const marks = [
    group('paper', marksOfFaces(seen.map(({ face }) => face))),
    group('scores', scoreMarks(folded, look)),
    group('prints', regionBadges(regionsOf(seen), folded)),
    group('findings', findingMarks(folded, flatFaces(pattern, open), look)),
    group('measures', measures(folded, look)),
  ].filter((each) => each.marks.length > 0);
  return {
    name: 'sheet',
    heading: 'the open sheet, inside face up',
    description:
      'The blank before any fold, with its inside face up: its parts by name, valley scores dashed, mountain scores dash-dotted, and the distances between scores.',
    ratio: look.ratio,
    width: look.width + 2 * measureRoom,
    height: look.height + measureRoom,
    marks: moveMarks(marks, measureRoom, 0),
  };
}

function scoreMarks({ pattern, knockouts }: Folded, look: FlatLook): readonly Mark[] {
  const { vertices, edges } = pattern;
  const ofLetter = (letter: 'V' | 'M', line: 'valley' | 'mountain'): readonly LineMark[] => {
    const lines = edges.flatMap((edge) => {
      const [from, to] = edge.ends.map((end) => vertices[end]);
      if (edge.letter !== letter || !isCrease(edge) || !from || !to) return [];
      return edgeLeft(from, to, knockouts?.openings ?? []).map((part) => part.map(look.onPage));
    });
    return lines.length === 0 ? [] : [{ kind: 'line', line, lines }];
  };
  return [...ofLetter('V', 'valley'), ...ofLetter('M', 'mountain')];
}

/** Nanometres within which positions are one. */
const same = 1000;

/** Where scores that run one way meet an axis, and the sheet's two edges. */
function stopsAlong({ pattern }: Folded, axis: 'x' | 'y', length: Nm): readonly Nm[] {
  const other = axis === 'x' ? 'y' : 'x';
  const found = pattern.edges.filter(isCrease).flatMap(({ ends }) => {
    const [from, to] = ends.map((end) => pattern.vertices[end]);
    if (!from || !to) return [];
    return Math.abs(from[axis] - to[axis]) < same && Math.abs(from[other] - to[other]) > same
      ? [from[axis]]
      : [];
  });
  return [0, ...found, length]
    .toSorted((one, next) => one - next)
    .filter((value, index, all) => index === 0 || value - (all[index - 1] ?? 0) > same);
}

/** A distance in as few letters as it takes; the table of scores has both systems. */
const short = (length: Nm, measure: 'metric' | 'inch'): string =>
  measure === 'inch' ? `${inInches(length)} in` : `${Math.round(inMm(length) * 10) / 10} mm`;

/** Distances between neighbours where there is room to write them. */
function measures(folded: Folded, look: FlatLook): readonly Mark[] {
  const { blank, spec } = folded.plan;
  const between = (stops: readonly Nm[], ratio: number) =>
    stops.slice(1).flatMap((to, index) => {
      const from = stops[index] ?? 0;
      const text = short(to - from, spec.measure);
      const wide = plateOf(text, textSize.label).width;
      return (to - from) * ratio > wide + 1 ? [{ from: from * ratio, to: to * ratio, text }] : [];
    });
  const scale = look.ratio / 1e6;
  return [
    ...between(stopsAlong(folded, 'x', blank.width), scale).flatMap(({ from, to, text }) =>
      measureBelow(from, to, look.height, text),
    ),
    ...between(stopsAlong(folded, 'y', blank.height), scale).flatMap(({ from, to, text }) =>
      measureBeside(from, to, look.width, text),
    ),
  ];
}
