import type { Bound } from './bounds.ts';

/**
 * A bound derived by adding up others: `factors · unknowns ≤ limit`. It remembers what was added, so that
 * every conclusion can explain itself; see {@link sharesOf}.
 */
export interface Row {
  readonly factors: readonly number[];
  readonly limit: number;
  /** How many bounds went in, counted with repeats. */
  readonly size: number;
  readonly origin: Bound | readonly [above: Row, a: number, below: Row, b: number];
}

/** For each unknown, in order, the rows that bound it by the ones before it; and rows that nothing can meet. */
export interface Elimination {
  readonly rowsOf: readonly (readonly Row[])[];
  readonly contradictions: readonly Row[];
}

/** Half a nanometre: lengths are whole, so less than this is rounding in the arithmetic. */
const SLIP = 0.5;

/** A share of a factor; far above rounding, far below the factors that bounds have. */
const CANCELLED = 1e-9;

/**
 * Fourier-Motzkin elimination, last unknown first. Afterwards unknowns can be chosen first to last, each
 * anywhere within its rows, and the rest still have a solution. Exact while factors are sums of powers of two.
 * Source: Dantzig & Eaves, "Fourier-Motzkin elimination and its dual", J. Combin. Theory A 14 (1973) 288-297
 * (from memory).
 */
export function eliminate(bounds: readonly Bound[], names: readonly string[]): Elimination {
  let rows = tightest(bounds.map((bound) => rowOf(bound, names)));
  const rowsOf: Row[][] = names.map(() => []);
  for (let index = names.length - 1; index >= 0; index--) {
    const upper = rows.filter((row) => factor(row, index) > 0);
    const lower = rows.filter((row) => factor(row, index) < 0);
    const rest = rows.filter((row) => factor(row, index) === 0);
    rowsOf[index] = [...upper, ...lower];
    rows = tightest([...rest, ...upper.flatMap((above) => lower.map((below) => add(above, below, index)))]);
  }
  return { rowsOf, contradictions: rows };
}

/** How much of which bound went into a row. */
export function sharesOf(row: Row): ReadonlyMap<Bound, number> {
  const shares = new Map<Bound, number>();
  const collect = ({ origin }: Row, share: number): void => {
    if (isSum(origin)) {
      collect(origin[0], share * origin[1]);
      collect(origin[2], share * origin[3]);
    } else shares.set(origin, (shares.get(origin) ?? 0) + share);
  };
  collect(row, 1);
  return shares;
}

const isSum = (origin: Row['origin']): origin is readonly [Row, number, Row, number] => Array.isArray(origin);

const factor = (row: Row, index: number): number => row.factors[index] ?? 0;

function rowOf(bound: Bound, names: readonly string[]): Row {
  return { factors: names.map((name) => bound.terms[name] ?? 0), limit: bound.limit, size: 1, origin: bound };
}

function add(above: Row, below: Row, index: number): Row {
  const a = 1 / factor(above, index);
  const b = -1 / factor(below, index);
  return {
    factors: above.factors.map((value, at) => (at === index ? 0 : sum(value * a, factor(below, at) * b))),
    limit: above.limit * a + below.limit * b,
    size: above.size + below.size,
    origin: [above, a, below, b],
  };
}

/** A sum that is zero where the two cancel but for rounding: a factor that small would be taken for a real one. */
function sum(one: number, other: number): number {
  const total = one + other;
  return Math.abs(total) < CANCELLED * Math.abs(one) ? 0 : total;
}

/**
 * Keeps the strictest of the rows that bound the same combination, among equals the simplest. Rows without
 * unknowns are dropped when they hold and kept when they cannot.
 */
function tightest(rows: readonly Row[]): Row[] {
  const kept: { row: Row; scale: number }[] = [];
  for (const row of rows) {
    const scale = row.factors.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    if (scale === 0) {
      if (row.limit < -SLIP) kept.push({ row, scale: 0 });
      continue;
    }
    const index = kept.findIndex((other) => alike(row, scale, other.row, other.scale));
    const other = kept[index];
    if (!other) kept.push({ row, scale });
    else if (stricter(row, scale, other.row, other.scale)) kept[index] = { row, scale };
  }
  return kept.map(({ row }) => row);
}

function alike(row: Row, scale: number, other: Row, otherScale: number): boolean {
  if (otherScale === 0) return false;
  const { factors } = row;
  for (let at = 0; at < factors.length; at++) {
    if (factor(row, at) * otherScale !== factor(other, at) * scale) return false;
  }
  return true;
}

function stricter(row: Row, scale: number, other: Row, otherScale: number): boolean {
  const difference = row.limit / scale - other.limit / otherScale;
  return difference < 0 || (difference === 0 && row.size < other.size);
}
