import { isCrease } from '../../creases/crease-pattern.ts';
import type { Shape } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/plane.ts';
import { stretchesLeft } from '../stretches-left.ts';
import { type Checked, type Finding, shownPlaces, titlesIn } from './finding.ts';

/** A fold of which less than this share is left does not fold there: it tears or bends elsewhere; common practice. */
const leastLeft = 0.25;

/** Openings that cut into folds, and those that reach the sheet's own edge without being meant to. */
export function cutLines(checked: Checked): readonly Finding[] {
  return [...cutFolds(checked), ...reachedEdges(checked)];
}

interface FoldLoss {
  readonly length: number;
  readonly lost: number;
  readonly at: readonly Point[];
}

/** What openings take from the creases of a step, or from the border for `undefined`. */
function lossOf(step: number | undefined, openings: Shape, { folded }: Checked): FoldLoss {
  const { edges, vertices } = folded.pattern;
  let [length, lost] = [0, 0];
  const at: Point[] = [];
  for (const edge of edges) {
    if (step === undefined ? edge.letter !== 'B' : edge.step !== step || !isCrease(edge)) continue;
    const [from, to] = edge.ends.map((end) => vertices[end]);
    if (!from || !to) continue;
    const whole = Math.hypot(to.x - from.x, to.y - from.y);
    const left = stretchesLeft(from, to, openings);
    const share = left.reduce((sum, [start, end]) => sum + end - start, 0);
    length += whole;
    lost += whole * (1 - share);
    if (share < 1) at.push(firstGap(from, to, left));
  }
  return { length, lost, at };
}

function firstGap(from: Point, to: Point, left: readonly (readonly [number, number])[]): Point {
  const ends = [0, ...left.flat(), 1];
  const gaps = ends.flatMap((start, index) => {
    const end = ends[index + 1] ?? start;
    return index % 2 === 0 && end > start ? [(start + end) / 2] : [];
  });
  const share = gaps[0] ?? 0.5;
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

function cutFolds(checked: Checked): Finding[] {
  const { list, openings, folded, say } = checked;
  return folded.pattern.steps.flatMap((name, step): Finding[] => {
    const { length, lost, at } = lossOf(step, openings, checked);
    if (lost === 0) return [];
    const losses = list.map((knockout) => ({ knockout, ...lossOf(step, knockout.onBlank, checked) }));
    const guilty = losses.filter((loss) => loss.lost > 0).map(({ knockout }) => knockout.index);
    const percent = Math.max(1, Math.round((100 * lost) / length));
    const common = { knockouts: guilty, at: shownPlaces(at) };
    const words = `${titlesIn(list, guilty)} cut${guilty.length > 1 ? '' : 's'} ${say(Math.round(lost / 1e4) * 1e4)}, ${percent} %, out of the fold “${name}”`;
    if (length - lost < leastLeft * length)
      return [
        {
          ...common,
          code: 'fold-cut-away',
          does: 'refuse',
          message: `${words}: too little is left to fold`,
          remedy: 'make it smaller or move it off the fold',
          brief: `${percent} % of a fold gone`,
        },
      ];
    const meant = losses.every((loss) => loss.lost === 0 || loss.knockout.atEdge);
    if (meant) return [];
    return [
      {
        ...common,
        code: 'fold-cut',
        does: 'tell',
        message: `${words}: the score stops at the opening, and the edge shows it from both sides`,
        remedy: 'move it off the fold if that is not meant',
        brief: 'cut across a fold',
      },
    ];
  });
}

const reachedEdges = (checked: Checked): Finding[] =>
  checked.list.flatMap((knockout): Finding[] => {
    if (knockout.atEdge) return [];
    const { lost, at } = lossOf(undefined, knockout.onBlank, checked);
    if (lost === 0) return [];
    return [
      {
        code: 'edge-cut',
        does: 'tell',
        knockouts: [knockout.index],
        message: `${knockout.title} reaches the sheet’s edge: the outline changes there, and a hem or flap under it is cut open`,
        remedy: 'move it, make it smaller, or cut only the seen layer if that is not meant',
        brief: 'cut into the edge',
        at: shownPlaces(at),
      },
    ];
  });
