import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import type { Bound, BoundKind } from './bounds.ts';
import { eliminate, type Row, sharesOf } from './eliminate.ts';
import type { Arrangement } from './plan.ts';
import type { Misfit } from './solve-folder.ts';

/** One bound that cannot be met, and by how much. */
export interface Shortage {
  readonly bound: string;
  readonly kind: BoundKind;
  /** The room that ends there, for a bound of that kind. */
  readonly room?: Bound['room'];
  readonly path: string;
  readonly shortfall: Nm;
  readonly message: string;
  /** Dimensions that the spec gives and that take part, each with the nearest value that would do. */
  readonly givens: readonly Given[];
}

/** A given dimension of a contradiction. */
export interface Given {
  readonly name: string;
  readonly path: string;
  readonly value: Nm;
  /** With this instead, the contradiction is gone. */
  readonly instead: Nm;
}

/**
 * The order in which bounds are laid down. The first kind that contradicts what was laid before it is what is
 * told: that a sheet is too small means nothing while the spec contradicts itself.
 */
const kinds: readonly BoundKind[] = ['given', 'form', 'fit', 'room'];

/** More contradictions than this are not told apart. */
const MOST_CONTRADICTIONS = 12;

/** The arrangement that comes nearest to folding. */
export function nearest(misfits: readonly Misfit[]): Misfit {
  const worst = ({ contradictions }: Misfit) =>
    Math.max(...contradictions.map((row) => shortfallOf(row, named(row))));
  const best = misfits.toSorted((one, other) => worst(one) - worst(other))[0];
  if (!best) throw new Error('nothing was tried, so nothing can be refused');
  return best;
}

/** Why an arrangement cannot be folded: bounds which, had each given way by its shortfall, would let it fold. */
export function shortagesOf(misfit: Misfit, measure: Measure): readonly Shortage[] {
  const { bounds, unknownNames } = misfit;
  let laid: readonly Bound[] = [];
  for (const kind of kinds) {
    laid = [...laid, ...bounds.filter((bound) => bound.kind === kind)];
    const gaps = gapsIn(laid, unknownNames);
    if (gaps.length > 0) return gaps.map((gap) => shortageOf(misfit, gap, measure));
  }
  return [];
}

/** A bound that must give way, by how much in all, and the contradiction that asks for the most. */
interface Gap {
  readonly bound: Bound;
  readonly shortfall: Nm;
  readonly row: Row;
}

/** Lets one bound after the other give way until nothing contradicts. */
function gapsIn(bounds: readonly Bound[], unknownNames: readonly string[]): readonly Gap[] {
  const gaps = new Map<string, Gap>();
  let laid = bounds;
  for (let count = 0; count < MOST_CONTRADICTIONS; count++) {
    const row = worstOf(eliminate(laid, unknownNames).contradictions);
    if (!row) break;
    const relaxed = named(row);
    const more = shortfallOf(row, relaxed);
    laid = laid.map((one) => (one === relaxed ? { ...one, limit: one.limit + more } : one));
    const bound = bounds.find(({ name, path }) => name === relaxed.name && path === relaxed.path) ?? relaxed;
    const known = gaps.get(bound.name);
    gaps.set(bound.name, { bound, row, shortfall: more + (known?.shortfall ?? 0) });
  }
  return [...gaps.values()];
}

/** Whether a misfit would not fold in a room of any size. */
export function hopelessInAnyRoom({ bounds, unknownNames }: Misfit): boolean {
  const rest = bounds.filter(({ kind }) => kind !== 'room');
  return eliminate(rest, unknownNames).contradictions.length > 0;
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

function shortageOf({ arrangement }: Misfit, { bound, shortfall, row }: Gap, measure: Measure): Shortage {
  const givens = givensOf(row);
  const whys = [...sharesOf(row).keys()]
    .filter(({ name, kind }) => name !== bound.name && kind !== 'given')
    .map(({ why }) => why);
  const listed = bound.room?.name === 'sheet' && arrangement.sheet.path === undefined;
  const own = listed ? '' : (bound.path ?? '');
  return {
    bound: bound.name,
    kind: bound.kind,
    ...(bound.room ? { room: bound.room } : {}),
    path: bound.kind === 'room' ? own : (givens[0]?.path ?? own),
    shortfall,
    givens,
    message: sentence(bound, shortfall, givens, whys, arrangement, measure),
  };
}

/** The given dimensions of a contradiction; a fixed sum of unknowns is a pair of bounds, one for each side. */
function givensOf(row: Row): readonly Given[] {
  return [...sharesOf(row)].flatMap(([bound, share]) => {
    if (bound.kind !== 'given' || bound.path === undefined) return [];
    const needed = Math.ceil(-row.limit / share);
    // the bound that holds the value from below has its terms negated
    const below = (Object.values(bound.terms)[0] ?? 1) < 0;
    const value = Math.abs(bound.limit);
    return [{ name: bound.name, path: bound.path, value, instead: below ? value - needed : value + needed }];
  });
}

function sentence(
  bound: Bound,
  shortfall: Nm,
  givens: readonly Given[],
  whys: readonly string[],
  { sheet, sheetTurned }: Arrangement,
  measure: Measure,
): string {
  const show = (length: Nm) => describeLength(length, measure);
  const given = givens.map(({ name, value }) => `the given ${name} is ${show(value)}`);
  const because = [...new Set([...whys, ...given])].join(', and ');
  const reasons = because === '' ? '' : `: ${because}`;
  if (bound.room) {
    const { name: what, side, has } = bound.room;
    const name = what === 'sheet' ? `${sheet.title}${sheetTurned ? ', turned,' : ''}` : 'the cutter’s area';
    const way = side === 'width' ? 'wide' : 'high';
    return `the blank would be ${show(has + shortfall)} ${way} and ${name} is ${show(has)}, so ${show(shortfall)} is missing${reasons}`;
  }
  if (bound.kind === 'fit' && bound.limit > 0) {
    return `${bound.why}: it must be at most ${show(bound.limit)}, and cannot be less than ${show(bound.limit + shortfall)}${reasons.replace(/^:/u, ', because')}`;
  }
  if (bound.kind === 'fit') {
    return `${bound.why}: it must be at least ${show(-bound.limit)}, and can only be ${show(-bound.limit - shortfall)}${reasons.replace(/^:/u, ', because')}`;
  }
  if (bound.kind === 'form') return `${bound.why}; that fails by ${show(shortfall)}${reasons}`;
  return `the given dimensions contradict each other by ${show(shortfall)}${reasons}`;
}
