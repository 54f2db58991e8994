import type { Shape } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { stretchesLeft } from '../knockouts/stretches-left.ts';
import type { Score } from './drawing.ts';
import { along } from './perforate.ts';

/** Scores without what openings take from them: the paper's edge is wherever one is cut off. */
export const interruptScores = (scores: readonly Score[], openings: Shape): Score[] =>
  scores.flatMap((score) => interrupted(score, openings));

function interrupted(score: Score, openings: Shape): Score[] {
  const [first, last] = [score.points[0], score.points.at(-1)];
  if (!first || !last) return [];
  const length = Math.hypot(last.x - first.x, last.y - first.y);
  const shareOf = ({ x, y }: Point) => Math.hypot(x - first.x, y - first.y) / length;
  const left = stretchesLeft(first, last, openings);
  const parts = left.map(([start, end]): Omit<Score, 'id'> => {
    if (start === 0 && end === 1) return score;
    const between = score.points.filter((point) => shareOf(point) > start && shareOf(point) < end);
    return {
      points: [along(first, last, start), ...between, along(first, last, end)],
      atEdge: [start > 0 || score.atEdge[0], end < 1 || score.atEdge[1]],
    };
  });
  const [only] = parts;
  if (parts.length === 1 && only) return [{ ...only, id: score.id }];
  return parts.map((part, index) => ({ ...part, id: `${score.id}-part-${index + 1}` }));
}
