import type { Nm } from '../lengths/nanometres.ts';
import type { Bound, Range, Unknown } from './bounds.ts';
import { eliminate, type Row, sharesOf } from './eliminate.ts';
import { snap } from './snap.ts';

/** How one unknown got its value. */
export interface Settled {
  readonly name: string;
  readonly value: Nm;
  readonly range: Range;
  readonly why: string;
  /** `given` by the spec, `bound` where a limit decides, `wish` where the style's preference does. */
  readonly decidedBy: 'given' | 'bound' | 'wish';
  readonly onGrid: boolean;
}

export type Outcome =
  | { readonly ok: true; readonly settled: readonly Settled[]; readonly values: Readonly<Record<string, Nm>> }
  | { readonly ok: false; readonly contradictions: readonly Row[] };

/**
 * Finds a value for each unknown, in order: as near to its wish as the bounds allow, on the grid where the
 * bounds leave room for it. Never a value outside a bound.
 * @param grid step in nanometres; 0 for none
 */
export function settle(unknowns: readonly Unknown[], bounds: readonly Bound[], grid: Nm): Outcome {
  const names = unknowns.map((unknown) => unknown.name);
  const { rowsOf, contradictions } = eliminate(bounds, names);
  if (contradictions.length > 0) return { ok: false, contradictions };
  const values: Record<string, Nm> = {};
  const settled: Settled[] = [];
  for (const [index, unknown] of unknowns.entries()) {
    const limits = limitsOf(rowsOf[index] ?? [], index, names, values);
    const one = settleOne(unknown, limits, values, grid);
    values[unknown.name] = one.value;
    settled.push(one);
  }
  return { ok: true, settled, values };
}

interface Limits {
  readonly range: Range;
  readonly floor: Row | undefined;
  readonly ceiling: Row | undefined;
}

function limitsOf(
  rows: readonly Row[],
  index: number,
  names: readonly string[],
  values: Readonly<Record<string, Nm>>,
): Limits {
  let least = Number.NEGATIVE_INFINITY;
  let most = Number.POSITIVE_INFINITY;
  let floor: Row | undefined;
  let ceiling: Row | undefined;
  for (const row of rows) {
    const own = row.factors[index] ?? 0;
    const rest = names
      .slice(0, index)
      .reduce((sum, name, at) => sum + (row.factors[at] ?? 0) * (values[name] ?? 0), 0);
    const limit = (row.limit - rest) / own;
    if (own > 0 && limit < most) [most, ceiling] = [limit, row];
    if (own < 0 && limit > least) [least, floor] = [limit, row];
  }
  return { range: { least, most }, floor, ceiling };
}

function settleOne(
  unknown: Unknown,
  { range, floor, ceiling }: Limits,
  known: Readonly<Record<string, Nm>>,
  grid: Nm,
): Settled {
  const wish = unknown.wish(range, known);
  const pinned = Math.ceil(range.least) >= Math.floor(range.most);
  const given =
    pinned && floor ? [...sharesOf(floor).keys()].find(({ kind }) => kind === 'given') : undefined;
  const { value, onGrid } = pinned
    ? { value: Math.ceil(range.least), onGrid: grid <= 0 || Math.ceil(range.least) % grid === 0 }
    : snap(wish, range, grid);
  const base = { name: unknown.name, value, range, onGrid };
  if (given) return { ...base, why: given.why, decidedBy: 'given' };
  const limit = value > wish.value ? floor : value < wish.value ? ceiling : undefined;
  const clipped = wish.value < range.least || wish.value > range.most || pinned;
  if (limit && clipped) return { ...base, why: whyOf(limit), decidedBy: 'bound' };
  return { ...base, why: wish.why, decidedBy: 'wish' };
}

/** The reasons behind a row, strongest share first, as one clause. */
export function whyOf(row: Row): string {
  return [...new Set([...sharesOf(row).keys()].map((bound) => bound.why))].join(', and ');
}
