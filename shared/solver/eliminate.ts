import type { Bound } from './bounds.ts';

/**
 * A bound derived by adding up others: `factors · unknowns ≤ limit`, with how much of which bound went in.
 * The shares make every conclusion explain itself.
 */
export interface Row {
  readonly factors: readonly number[];
  readonly limit: number;
  readonly shares: ReadonlyMap<Bound, number>;
}

/** For each unknown, in order, the rows that bound it by the ones before it; and rows that nothing can meet. */
export interface Elimination {
  readonly rowsOf: readonly (readonly Row[])[];
  readonly contradictions: readonly Row[];
}

/** Half a nanometre: lengths are whole, so less than this is rounding in the arithmetic. */
const SLIP = 0.5;

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
    rowsOf[index] = [...upper, ...lower];
    const rest = rows.filter((row) => factor(row, index) === 0);
    rows = tightest([...rest, ...upper.flatMap((above) => lower.map((below) => add(above, below, index)))]);
  }
  return { rowsOf, contradictions: rows.filter((row) => row.limit < -SLIP) };
}

const factor = (row: Row, index: number): number => row.factors[index] ?? 0;

function rowOf(bound: Bound, names: readonly string[]): Row {
  return {
    factors: names.map((name) => bound.terms[name] ?? 0),
    limit: bound.limit,
    shares: new Map([[bound, 1]]),
  };
}

function add(above: Row, below: Row, index: number): Row {
  const a = 1 / factor(above, index);
  const b = -1 / factor(below, index);
  const shares = new Map<Bound, number>();
  for (const [bound, share] of above.shares) shares.set(bound, share * a);
  for (const [bound, share] of below.shares) shares.set(bound, (shares.get(bound) ?? 0) + share * b);
  return {
    factors: above.factors.map((value, at) => (at === index ? 0 : value * a + factor(below, at) * b)),
    limit: above.limit * a + below.limit * b,
    shares,
  };
}

/** Keeps the strictest of the rows that bound the same combination; among equals the simplest. */
function tightest(rows: readonly Row[]): Row[] {
  const best = new Map<string, Row>();
  const contradictions: Row[] = [];
  for (const row of rows) {
    const scale = row.factors.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    if (scale === 0) {
      if (row.limit < -SLIP) contradictions.push(row);
      continue;
    }
    const key = row.factors.map((value) => value / scale).join();
    const other = best.get(key);
    if (!other || stricter(row, scale, other)) best.set(key, row);
  }
  return [...best.values(), ...contradictions];
}

function stricter(row: Row, scale: number, other: Row): boolean {
  const otherScale = other.factors.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const difference = row.limit / scale - other.limit / otherScale;
  return difference < 0 || (difference === 0 && row.shares.size < other.shares.size);
}
