import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Bound, BoundKind } from './bounds.ts';
import { type Row, sharesOf } from './eliminate.ts';
import type { Misfit } from './solve-folder.ts';

/** One bound that cannot be met, and by how much. */
export interface Shortage {
  readonly bound: string;
  readonly path: string;
  readonly shortfall: Nm;
  readonly message: string;
}

/** Which bound of a contradiction to name: what a maker would change first stands last. */
const naming: readonly BoundKind[] = ['room', 'fit', 'form', 'given'];

/** The arrangement that comes nearest to folding. */
export function nearest(misfits: readonly Misfit[]): Misfit {
  const worst = ({ contradictions }: Misfit) =>
    Math.max(...contradictions.map((row) => shortfallOf(row, named(row))));
  const best = misfits.toSorted((one, other) => worst(one) - worst(other))[0];
  if (!best) throw new Error('nothing was tried, so nothing can be refused');
  return best;
}

/** Why an arrangement cannot be folded, one entry for each contradiction. */
export const shortagesOf = (misfit: Misfit, measure: Measure): readonly Shortage[] =>
  misfit.contradictions.map((row) => shortageOf(row, measure));

function named(row: Row): Bound {
  const bound = [...sharesOf(row).keys()].toSorted(
    (one, other) => naming.indexOf(one.kind) - naming.indexOf(other.kind),
  )[0];
  if (!bound) throw new Error('a contradiction has no bounds');
  return bound;
}

/** How far a bound would have to give way, in whole nanometres. */
const shortfallOf = (row: Row, bound: Bound): Nm => Math.ceil(-row.limit / (sharesOf(row).get(bound) ?? 1));

function shortageOf(row: Row, measure: Measure): Shortage {
  const bound = named(row);
  const shortfall = shortfallOf(row, bound);
  const show = (length: Nm) => describeLength(length, measure);
  const others = [...sharesOf(row).keys()].filter((other) => other !== bound);
  const given = others.find((other) => other.kind === 'given');
  const because = [...new Set(others.map((other) => other.why))].join(', and ');
  const need =
    bound.limit >= 0
      ? `${bound.name}: ${show(bound.limit + shortfall)} are needed and ${show(bound.limit)} are there`
      : `${bound.name}: at least ${show(-bound.limit)} are needed and ${show(-bound.limit - shortfall)} are possible`;
  return {
    bound: bound.name,
    path: given?.path ?? bound.path ?? '',
    shortfall,
    message: `${need}, ${show(shortfall)} too little${because === '' ? '' : `, because ${because}`}`,
  };
}
