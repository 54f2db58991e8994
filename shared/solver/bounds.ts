import type { Nm } from '../lengths/nanometres.ts';

/**
 * What a bound is about. `room` the sheet and the machine, `fit` the contents, `form` the way of folding,
 * `given` a dimension that the spec fixes.
 */
export type BoundKind = 'room' | 'fit' | 'form' | 'given';

/** One linear bound on a style's unknowns: the sum of `terms[name] × unknown` is at most `limit` nanometres. */
export interface Bound {
  readonly name: string;
  readonly kind: BoundKind;
  readonly terms: Readonly<Record<string, number>>;
  readonly limit: Nm;
  /** A clause that ends the sentence "… because …". */
  readonly why: string;
  /** JSON Pointer of the spec member that sets the bound, if one does. */
  readonly path?: string;
  /** Of a bound of kind `room`: which room ends here, at which side, and how long that side is. */
  readonly room?: { readonly name: 'sheet' | 'cutter'; readonly side: 'width' | 'height'; readonly has: Nm };
}

/** The values an unknown may still take, in nanometres; both ends may be infinite. */
export interface Range {
  readonly least: Nm;
  readonly most: Nm;
}

/** What a style would like an unknown to be, once the ones before it are known. */
export interface Wish {
  readonly value: Nm;
  /** Which way to the grid; `exact` keeps the value as it is where the bounds allow it. */
  readonly snap: 'up' | 'down' | 'nearest' | 'exact';
  /** A clause that ends the sentence "… because …". */
  readonly why: string;
}

/** One dimension that the solver finds. Unknowns are settled in the order in which a style lists them. */
export interface Unknown {
  readonly name: string;
  wish(range: Range, known: Readonly<Record<string, Nm>>): Wish;
}

/** At least: a bound that keeps the sum of the terms at or above `least`. */
export function atLeast(
  name: string,
  kind: BoundKind,
  terms: Readonly<Record<string, number>>,
  least: Nm,
  why: string,
  path?: string,
): Bound {
  const negated = Object.fromEntries(Object.entries(terms).map(([key, factor]) => [key, -factor]));
  return atMost(name, kind, negated, -least, why, path);
}

/** At most: a bound that keeps the sum of the terms at or below `limit`. */
export function atMost(
  name: string,
  kind: BoundKind,
  terms: Readonly<Record<string, number>>,
  limit: Nm,
  why: string,
  path?: string,
): Bound {
  return Object.freeze({ name, kind, terms, limit, why, ...(path === undefined ? {} : { path }) });
}

/** The two bounds that fix a sum of unknowns to one value. */
export function exactly(
  name: string,
  terms: Readonly<Record<string, number>>,
  value: Nm,
  path: string,
): readonly Bound[] {
  const why = `the spec gives the ${name}`;
  return [atMost(name, 'given', terms, value, why, path), atLeast(name, 'given', terms, value, why, path)];
}

/** How much further a bound's sum could grow, in nanometres. */
export const slackOf = ({ terms, limit }: Bound, values: Readonly<Record<string, Nm>>): Nm =>
  Object.entries(terms).reduce((slack, [name, factor]) => slack - factor * (values[name] ?? 0), limit);
