import { type Contour, isCurve, type Stretch } from '../geometry/contour.ts';
import type { Point } from '../geometry/plane.ts';
import { walk } from '../geometry/walk.ts';
import type { Nm } from '../lengths/nanometres.ts';

/** A line of stretches that need not end where it began. */
export interface OpenLine {
  readonly start: Point;
  readonly stretches: readonly Stretch[];
}

/** What is left of an outline: all of it, or the lines that nothing before it has drawn. */
export type Left = { readonly whole: Contour } | { readonly lines: readonly OpenLine[] };

/**
 * Remembers every straight line that runs along an axis, so that one which two outlines share is drawn once. Only such
 * lines can be shared: pieces lie in boxes of their own, and so do strips of glue.
 */
export class LinesOnce {
  readonly #drawn = new Map<string, [from: Nm, to: Nm][]>();

  /** Takes a line along an axis as drawn already, as the edge of a sheet is there. */
  take(from: Point, to: Point): void {
    const line = alongAxis(from, to);
    if (line) this.#listOf(line.key).push([Math.min(line.from, line.to), Math.max(line.from, line.to)]);
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
      if (left.length !== 1 || only?.[0] !== line.from || only[1] !== line.to) missing = true;
      for (const [start, end] of left) add(line.at(start), { to: line.at(end) });
      this.take(from, stretch.to);
    });
    if (!missing) return { whole: contour };
    return { lines: joinedAround(lines) };
  }

  #listOf(key: string): [Nm, Nm][] {
    const list = this.#drawn.get(key) ?? [];
    this.#drawn.set(key, list);
    return list;
  }

  /** The stretches of a line that are not drawn yet, in the line's own direction. */
  #leftOf({ key, from, to }: AxisLine): [Nm, Nm][] {
    let left: [Nm, Nm][] = [[Math.min(from, to), Math.max(from, to)]];
    for (const [start, end] of this.#drawn.get(key) ?? [])
      left = left.flatMap(([low, high]): [Nm, Nm][] =>
        end <= low || start >= high
          ? [[low, high]]
          : [
              ...(low < start ? [[low, start] as [Nm, Nm]] : []),
              ...(end < high ? [[end, high] as [Nm, Nm]] : []),
            ],
      );
    left.sort(([one], [other]) => one - other);
    return from <= to ? left : left.reverse().map(([low, high]) => [high, low]);
  }
}

interface AxisLine {
  readonly key: string;
  readonly from: Nm;
  readonly to: Nm;
  at(place: Nm): Point;
}

/** A stretch along an axis, to whole nanometres. */
function alongAxis(from: Point, to: Point): AxisLine | undefined {
  const [x1, y1, x2, y2] = [from.x, from.y, to.x, to.y].map(Math.round) as [Nm, Nm, Nm, Nm];
  if (x1 === x2 && y1 !== y2) return { key: `x ${x1}`, from: y1, to: y2, at: (y) => ({ x: x1, y }) };
  if (y1 === y2 && x1 !== x2) return { key: `y ${y1}`, from: x1, to: x2, at: (x) => ({ x, y: y1 }) };
  return undefined;
}

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
