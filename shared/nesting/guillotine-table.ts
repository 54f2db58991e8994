import type { ValuedBox } from './best-value.ts';
import { type Pose, posesWithin, type Spot } from './box.ts';
import { indexUpTo, reachable } from './reachable.ts';

/** The most valuable boxes that straight cuts from edge to edge yield from every sheet up to a size. */
export interface GuillotineTable {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** False when not every length that matters was listed: then values may be too low, and bound nothing. */
  readonly complete: boolean;
  /** Value for a sheet of any size up to the table's. */
  readonly worth: (width: number, height: number) => number;
  /** The same by the numbers of a listed column and row. */
  readonly worthAt: (column: number, row: number) => number;
  /** One layout of that value. */
  readonly layoutOf: (width: number, height: number) => readonly Spot[];
}

/** Value of a rectangle `width` × `height` that no layout on it exceeds for another reason, such as counts. */
export type Cap = (width: number, height: number) => number;

/** Whole numbers: 0 nothing, 1.. pose number + 1, then cuts. */
const nothing = 0;

/**
 * Every box as often as it fits, so that counts do not matter; with a cap on the value of rectangles, a bound for
 * counted boxes. Sizes are rounded down to sums of sides, between which nothing changes.
 * Source: Gilmore & Gomory, "Multistage cutting stock problems of two and more dimensions", Oper. Res. 13 (1965)
 * 94-120; Beasley, J. Oper. Res. Soc. 36 (1985) 297-306 (both from memory).
 */
export function guillotineTable(
  boxes: readonly ValuedBox[],
  width: number,
  height: number,
  counted: boolean,
  cap: Cap = () => Number.POSITIVE_INFINITY,
  mostLengths = 600,
): GuillotineTable {
  const room = { width, height };
  const usable = boxes.filter((box) => box.count > 0 && posesWithin(box, width, height).length > 0);
  const across = reachable(usable, 'width', room, counted, mostLengths);
  const along = reachable(usable, 'height', room, counted, mostLengths);
  const columns = across.lengths;
  const rows = along.lengths;
  const lying = boxes.flatMap((box, index) =>
    box.count === 0 ? [] : posesWithin(box, width, height).map((pose) => ({ pose, index, value: box.value })),
  );
  const stride = rows.length;
  const values = new Float64Array(columns.length * stride);
  const choices = new Int32Array(columns.length * stride); // pose + 1, or -(cut + 1)
  const cutBase = columns.length;
  const single = singles(lying, columns, rows);

  const [acrossCuts, alongCuts] = [cutsOf(columns), cutsOf(rows)];
  for (let i = 1; i < columns.length; i++) {
    const across = acrossCuts[i] as Int32Array;
    for (let j = 1; j < stride; j++) {
      const along = alongCuts[j] as Int32Array;
      const here = i * stride + j;
      let best = single.values[here] as number;
      let choice = single.choices[here] as number;
      for (let at = 0; at < across.length; at += 2) {
        const first = across[at] as number;
        const rest = across[at + 1] as number;
        const value = (values[first * stride + j] as number) + (values[rest * stride + j] as number);
        if (value > best) [best, choice] = [value, -(first + 1)];
      }
      for (let at = 0; at < along.length; at += 2) {
        const first = along[at] as number;
        const value =
          (values[i * stride + first] as number) + (values[i * stride + (along[at + 1] as number)] as number);
        if (value > best) [best, choice] = [value, -(cutBase + first + 1)];
      }
      values[here] = Math.min(best, cap(columns[i] as number, rows[j] as number));
      choices[here] = choice;
    }
  }

  const layout = (i: number, j: number, x: number, y: number, spots: Spot[]): void => {
    const choice = choices[i * stride + j] as number;
    if (choice === nothing) return;
    if (choice > 0) {
      const { pose, index } = lying[choice - 1] as (typeof lying)[number];
      spots.push({ box: index, x, y, ...pose });
      return;
    }
    const cut = -choice - 1;
    if (cut < cutBase) {
      const at = columns[cut] as number;
      layout(cut, j, x, y, spots);
      layout(indexUpTo(columns, (columns[i] as number) - at), j, x + at, y, spots);
    } else {
      const at = rows[cut - cutBase] as number;
      layout(i, cut - cutBase, x, y, spots);
      layout(i, indexUpTo(rows, (rows[j] as number) - at), x, y + at, spots);
    }
  };

  return {
    columns,
    rows,
    complete: across.complete && along.complete,
    worth: (w, h) => values[indexUpTo(columns, w) * stride + indexUpTo(rows, h)] ?? 0,
    worthAt: (column, row) => values[column * stride + row] ?? 0,
    layoutOf: (w, h) => {
      const spots: Spot[] = [];
      layout(indexUpTo(columns, w), indexUpTo(rows, h), 0, 0, spots);
      return spots;
    },
  };
}

/** For every length the two parts that a cut leaves, by their numbers: the first one, the rest rounded down, and so on. */
const cutsOf = (lengths: readonly number[]): readonly Int32Array[] =>
  lengths.map((length, index) => {
    const parts: number[] = [];
    for (let first = 1; first < index; first++) {
      const cut = lengths[first] as number;
      if (2 * cut > length) break;
      parts.push(first, indexUpTo(lengths, length - cut));
    }
    return Int32Array.from(parts);
  });

/** For every size the most valuable single box that fits, and its pose's number + 1. */
function singles(
  lying: readonly { readonly pose: Pose; readonly value: number }[],
  columns: readonly number[],
  rows: readonly number[],
) {
  const stride = rows.length;
  const values = new Float64Array(columns.length * stride);
  const choices = new Int32Array(columns.length * stride);
  const offer = (at: number, value: number, choice: number) => {
    if (value > (values[at] as number)) {
      values[at] = value;
      choices[at] = choice;
    }
  };
  lying.forEach(({ pose, value }, number) => {
    const i = columns.findIndex((length) => length >= pose.width);
    const j = rows.findIndex((length) => length >= pose.height);
    if (i >= 0 && j >= 0) offer(i * stride + j, value, number + 1);
  });
  for (let i = 0; i < columns.length; i++)
    for (let j = 0; j < stride; j++) {
      const here = i * stride + j;
      if (i > 0) offer(here, values[here - stride] as number, choices[here - stride] as number);
      if (j > 0) offer(here, values[here - 1] as number, choices[here - 1] as number);
    }
  return { values, choices };
}
