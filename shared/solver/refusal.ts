import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Bound, BoundKind } from './bounds.ts';
import { eliminate, type Row, sharesOf } from './eliminate.ts';
import type { Misfit } from './solve-folder.ts';

/** One bound that cannot be met, and by how much. */
export interface Shortage {
  readonly bound: string;
  readonly path: string;
  readonly shortfall: Nm;
  readonly message: string;
}

/**
 * The order in which bounds are laid down. Each kind is held against those before it, so that a shortfall of
 * the sheet never hides that the spec contradicts itself.
 */
const kinds: readonly BoundKind[] = ['given', 'form', 'fit', 'room'];

/** More contradictions than this are not told apart. */
const MOST_SHORTAGES = 12;

/** The arrangement that comes nearest to folding. */
export function nearest(misfits: readonly Misfit[]): Misfit {
  const worst = ({ contradictions }: Misfit) =>
    Math.max(...contradictions.map((row) => shortfallOf(row, named(row))));
  const best = misfits.toSorted((one, other) => worst(one) - worst(other))[0];
  if (!best) throw new Error('nothing was tried, so nothing can be refused');
  return best;
}

/** Why an arrangement cannot be folded: bounds which, had each given way by its shortfall, would let it fold. */
export function shortagesOf({ bounds, unknownNames }: Misfit, measure: Measure): readonly Shortage[] {
  const shortages: Shortage[] = [];
  let laid: Bound[] = [];
  for (const kind of kinds) {
    laid = [...laid, ...bounds.filter((bound) => bound.kind === kind)];
    while (shortages.length < MOST_SHORTAGES) {
      const row = worstOf(eliminate(laid, unknownNames).contradictions);
      if (!row) break;
      const bound = named(row);
      const shortfall = shortfallOf(row, bound);
      shortages.push(shortageOf(row, bound, shortfall, measure));
      laid = laid.map((one) => (one === bound ? { ...one, limit: one.limit + shortfall } : one));
    }
  }
  return shortages;
}

const worstOf = (rows: readonly Row[]): Row | undefined =>
  rows.toSorted((one, other) => shortfallOf(other, named(other)) - shortfallOf(one, named(one)))[0];

/** The bound of a contradiction that was laid down last. */
function named(row: Row): Bound {
  const bound = [...sharesOf(row).keys()].toSorted(
    (one, other) => kinds.indexOf(other.kind) - kinds.indexOf(one.kind),
  )[0];
  if (!bound) throw new Error('a contradiction has no bounds');
  return bound;
}

/** How far a bound would have to give way, in whole nanometres. */
const shortfallOf = (row: Row, bound: Bound): Nm => Math.ceil(-row.limit / (sharesOf(row).get(bound) ?? 1));

function shortageOf(row: Row, bound: Bound, shortfall: Nm, measure: Measure): Shortage {
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
    path: (bound.kind === 'room' ? bound.path : given?.path) ?? bound.path ?? '',
    shortfall,
    message: `${need}, ${show(shortfall)} too little${because === '' ? '' : `, because ${because}`}`,
  };
}
