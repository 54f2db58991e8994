import { type Contour, isCurve, type Stretch } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { walk } from '../geometry/walk.ts';
import type { Nm } from '../lengths/nanometres.ts';

/** A line of stretches that need not end where it began. */
export interface OpenLine {
  readonly start: Point;
  readonly stretches: readonly Stretch[];
}

/** Lines that are no farther apart than this are one: drawings are written to a micrometre, and no tool tells two. */
const SAME: Nm = 2000;

/** What is left of an outline: all of it, or the lines that nothing before it has drawn. */
export type Left = { readonly whole: Contour } | { readonly lines: readonly OpenLine[] };

/**
 * Remembers every straight line that runs along an axis, so that one which two outlines share is drawn once. Only such
 * lines can be shared: pieces lie in boxes of their own, and so do strips of glue.
 */
export class LinesOnce {
  /** By axis and place across it, in steps of {@link SAME}. */
  readonly #drawn = new Map<string, Drawn[]>();

  /** Takes a line along an axis as drawn already, as the edge of a sheet is there. */
  take(from: Point, to: Point): void {
    const line = alongAxis(from, to);
    if (!line) return;
    const key = keyOf(line, 0);
    const list = this.#drawn.get(key) ?? [];
    this.#drawn.set(key, list);
    list.push({ across: line.across, low: Math.min(line.from, line.to), high: Math.max(line.from, line.to) });
  }

  /** What is left of an outline, which is then drawn. */
  leftOf(contour: Contour): Left {
    const lines: { start: Point; stretches: Stretch[] }[] = [];
    let missing = false;
    let here: Point | undefined;
    const add = (from: Point, stretch: Stretch): void => {
      const open = lines.at(-1);
      if (open && here && same(here, from)) open.stretches.push(stretch);
      else lines.push({ start: from, stretches: [stretch] });
      here = stretch.to;
    };
    walk(contour, (from, stretch) => {
      const line = isCurve(stretch) ? undefined : alongAxis(from, stretch.to);
      if (!line) {
        add(from, stretch);
        return;
      }
      const left = this.#leftOf(line);
      const [only] = left;
      const isWhole = left.length === 1 && only && near(only[0], line.from) && near(only[1], line.to);
      if (!isWhole) missing = true;
      for (const [start, end] of left) add(line.at(start), { to: line.at(end) });
      this.take(from, stretch.to);
    });
    if (!missing) return { whole: contour };
    return { lines: joinedAround(lines) };
  }

  /** The stretches of a line that are not drawn yet, in the line's own direction. */
  #leftOf(line: AxisLine): [Nm, Nm][] {
    const { from, to, across } = line;
    const drawn = ([-1, 0, 1] as const)
      .flatMap((step) => this.#drawn.get(keyOf(line, step)) ?? [])
      .filter((each) => near(each.across, across));
    let left: [Nm, Nm][] = [[Math.min(from, to), Math.max(from, to)]];
    for (const { low: start, high: end } of drawn)
      left = left.flatMap(([low, high]): [Nm, Nm][] =>
        end <= low || start >= high
          ? [[low, high]]
          : [
              ...(low < start ? [[low, start] as [Nm, Nm]] : []),
              ...(end < high ? [[end, high] as [Nm, Nm]] : []),
            ],
      );
    left = left.filter(([low, high]) => high - low > SAME).sort(([one], [other]) => one - other);
    return from <= to ? left : left.reverse().map(([low, high]) => [high, low]);
  }
}

interface Drawn {
  readonly across: Nm;
  readonly low: Nm;
  readonly high: Nm;
}

interface AxisLine {
  readonly axis: 'x' | 'y';
  /** Where it lies across its axis. */
  readonly across: Nm;
  readonly from: Nm;
  readonly to: Nm;
  at(place: Nm): Point;
}

/** A stretch along an axis, to whole nanometres. */
function alongAxis(from: Point, to: Point): AxisLine | undefined {
  const [x1, y1, x2, y2] = [from.x, from.y, to.x, to.y].map(Math.round) as [Nm, Nm, Nm, Nm];
  if (x1 === x2 && y1 !== y2) return { axis: 'x', across: x1, from: y1, to: y2, at: (y) => ({ x: x1, y }) };
  if (y1 === y2 && x1 !== x2) return { axis: 'y', across: y1, from: x1, to: x2, at: (x) => ({ x, y: y1 }) };
  return undefined;
}

const near = (one: Nm, other: Nm): boolean => Math.abs(one - other) <= SAME;

/** The step in which a line lies, or one beside it. */
const keyOf = ({ axis, across }: AxisLine, beside: -1 | 0 | 1): string =>
  `${axis} ${Math.round(across / SAME) + beside}`;

const same = (p: Point, q: Point): boolean =>
  Math.round(p.x) === Math.round(q.x) && Math.round(p.y) === Math.round(q.y);

/** A line that runs through where the outline began is one line. */
function joinedAround(lines: readonly OpenLine[]): readonly OpenLine[] {
  const [first, ...rest] = lines;
  const last = rest.at(-1);
  const end = last?.stretches.at(-1)?.to;
  if (!first || !last || !end || !same(end, first.start)) return lines;
  return [{ start: last.start, stretches: [...last.stretches, ...first.stretches] }, ...rest.slice(0, -1)];
}
