import type { CreasePattern, Edge, Letter } from '../creases/crease-pattern.ts';
import type { Point } from '../geometry/plane.ts';
import type { Score } from './drawing.ts';
import { slug } from './slug.ts';

interface Run {
  readonly letter: Letter;
  readonly step: number;
  readonly points: readonly number[];
}

/** The crease pattern's valleys or mountains as the longest straight scores, in the order of the folds. */
export function scoresOf(pattern: CreasePattern): { readonly valleys: Score[]; readonly mountains: Score[] } {
  const onBorder = new Set(pattern.edges.filter((edge) => edge.letter === 'B').flatMap((edge) => edge.ends));
  const runs = pattern.steps.map((_, step) =>
    runsOf(
      pattern.vertices,
      pattern.edges.filter((edge) => edge.step === step),
    ),
  );
  const scores = runs.flatMap((ofStep, step) =>
    ofStep.map((run, index) => ({
      letter: run.letter,
      score: {
        id: [slug(pattern.steps[step] ?? ''), ...(ofStep.length > 1 ? [index + 1] : [])].join('-'),
        points: run.points.map((vertex) => at(pattern.vertices, vertex)),
        atEdge: [onBorder.has(run.points[0] ?? -1), onBorder.has(run.points.at(-1) ?? -1)] as const,
      },
    })),
  );
  const withLetter = (letter: Letter): Score[] =>
    scores.filter((one) => one.letter === letter).map((one) => one.score);
  return { valleys: withLetter('V'), mountains: withLetter('M') };
}

const at = (vertices: readonly Point[], index: number): Point => {
  const point = vertices[index];
  if (!point) throw new Error(`the crease pattern has no vertex ${index}`);
  return point;
};

/** Joins the edges of one fold, which may lie on several lines of the sheet, end to end. */
function runsOf(vertices: readonly Point[], edges: readonly Edge[]): Run[] {
  const ordered = edges
    .map((edge) => ({ edge, ends: ascending(vertices, edge.ends) }))
    .toSorted((one, other) => compare(at(vertices, one.ends[0]), at(vertices, other.ends[0])));
  const runs: { letter: Letter; step: number; points: number[] }[] = [];
  for (const { edge, ends } of ordered) {
    const open = runs.find(
      (run) =>
        run.letter === edge.letter &&
        run.points.at(-1) === ends[0] &&
        straight(at(vertices, run.points[0] ?? -1), at(vertices, ends[0]), at(vertices, ends[1])),
    );
    if (open) open.points.push(ends[1]);
    else runs.push({ letter: edge.letter, step: edge.step ?? -1, points: [...ends] });
  }
  return runs;
}

const compare = (p: Point, q: Point): number => p.x - q.x || p.y - q.y;

const ascending = (vertices: readonly Point[], [one, other]: readonly [number, number]): [number, number] =>
  compare(at(vertices, one), at(vertices, other)) <= 0 ? [one, other] : [other, one];

const straight = (p: Point, q: Point, r: Point): boolean =>
  Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) <= Math.hypot(r.x - p.x, r.y - p.y); // at most one nanometre off
