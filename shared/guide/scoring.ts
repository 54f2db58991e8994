import type { Drawing, Score } from '../drawing/drawing.ts';
import type { Point } from '../geometry/plane.ts';
import type { Nm } from '../lengths/nanometres.ts';

/** One score as it is pressed on a scoring board. */
export interface BoardScore {
  /** Distance of the score from the home edge, where the sheet rests against the board. */
  readonly at: Nm;
  /**
   * Where it begins and ends, several where it is interrupted: from the sheet's top edge, or, where that is the home
   * edge, from its left edge, which after a quarter turn to the left lies nearest the maker.
   */
  readonly stretches: readonly (readonly [from: Nm, to: Nm])[];
  /** It runs from edge to edge. */
  readonly whole: boolean;
  readonly folds: readonly string[];
}

/** All scores that are pressed while the sheet lies one way. */
export interface BoardPass {
  /** The edge of the sheet, inside face up, that rests against the board's home edge. */
  readonly home: 'left' | 'top';
  readonly scores: readonly BoardScore[];
}

/** A score that runs aslant, from one point of the sheet to another. */
export interface SlantedScore {
  readonly from: Point;
  readonly to: Point;
  readonly fold: string;
}

export interface Scoring {
  readonly passes: readonly BoardPass[];
  readonly slanted: readonly SlantedScore[];
}

/** Nanometres within which coordinates are one. */
const same = 1000;

interface Line {
  readonly from: Point;
  readonly to: Point;
  readonly fold: string;
}

const lineOf = ({ id, points }: Score): Line | undefined => {
  const [from, to] = [points[0], points.at(-1)];
  return from && to ? { from, to, fold: id.replace(/-\d+$/u, '').replaceAll('-', ' ') } : undefined;
};

/**
 * The scores of a drawing in the order in which the sheet is turned on a scoring board: first all that run from
 * top to bottom, measured from the left edge, then, after a quarter turn that brings the top edge to the left, all
 * others, measured from the top edge. Valleys and mountains are pressed alike.
 */
export function scoringOf({ valleys, mountains, width, height }: Drawing): Scoring {
  const lines = [...valleys, ...mountains].flatMap((score) => lineOf(score) ?? []);
  const upright = lines.filter(({ from, to }) => Math.abs(from.x - to.x) < same);
  const level = lines.filter(({ from, to }) => Math.abs(from.y - to.y) < same);
  const passes: BoardPass[] = [
    {
      home: 'left',
      scores: passOf(
        upright,
        (p) => p.x,
        (p) => p.y,
        height,
      ),
    },
    {
      home: 'top',
      scores: passOf(
        level,
        (p) => p.y,
        (p) => p.x,
        width,
      ),
    },
  ];
  return {
    passes: passes.filter(({ scores }) => scores.length > 0),
    slanted: lines.filter((line) => !upright.includes(line) && !level.includes(line)),
  };
}

function passOf(
  lines: readonly Line[],
  distance: (point: Point) => Nm,
  along: (point: Point) => Nm,
  length: Nm,
): readonly BoardScore[] {
  const groups: Line[][] = [];
  for (const line of lines.toSorted((one, other) => distance(one.from) - distance(other.from))) {
    const last = groups.at(-1);
    const at = last?.[0] && distance(last[0].from);
    if (last && at !== undefined && Math.abs(distance(line.from) - at) < same) last.push(line);
    else groups.push([line]);
  }
  return groups.map((group) => {
    const stretches = joined(
      group.map(
        ({ from, to }) => [Math.min(along(from), along(to)), Math.max(along(from), along(to))] as const,
      ),
    );
    const [only] = stretches;
    return {
      at: group[0] ? distance(group[0].from) : 0,
      stretches,
      whole: stretches.length === 1 && only !== undefined && only[0] < same && only[1] > length - same,
      folds: [...new Set(group.map(({ fold }) => fold))],
    };
  });
}

/** Stretches of one line that touch or overlap, as one. */
function joined(stretches: readonly (readonly [Nm, Nm])[]): readonly (readonly [Nm, Nm])[] {
  const result: (readonly [Nm, Nm])[] = [];
  for (const [from, to] of stretches.toSorted(([one], [other]) => one - other)) {
    const last = result.at(-1);
    if (last && from <= last[1] + same) result[result.length - 1] = [last[0], Math.max(last[1], to)];
    else result.push([from, to]);
  }
  return result;
}
