import type { Folded } from '../../folding/proof-of.ts';
import type { Point } from '../../geometry/plane.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import type { Layers } from '../layers.ts';
import type { KnockoutLimits } from '../limits.ts';
import type { PlacedKnockout, PlacedKnockouts } from '../placed.ts';

/** Something about knockouts that a maker has to know, or that must not be cut. */
export interface Finding {
  readonly code: string;
  /** `refuse`: nothing is drawn for the cutter; `tell`: the maker is told. */
  readonly does: 'refuse' | 'tell';
  /** The knockouts that it speaks of, by their places in the spec's list. */
  readonly knockouts: readonly number[];
  readonly message: string;
  readonly remedy?: string;
  /** A few words for a picture's legend. */
  readonly brief: string;
  /** What was measured, and the limit that it is held against. */
  readonly size?: Nm;
  readonly limit?: Nm;
  /** Where, on the open blank; the worst places where there are many. */
  readonly at: readonly Point[];
}

/** Everything that checks look at. */
export interface Checked extends PlacedKnockouts {
  readonly folded: Folded;
  readonly layers: Layers;
  readonly limits: KnockoutLimits;
  /** Writes a length as the spec's maker reads it. */
  readonly say: (length: Nm) => string;
}

/** The titles of knockouts in a sentence. */
export function titlesIn(list: readonly PlacedKnockout[], indices: readonly number[]): string {
  const titles = indices.flatMap((index) => list.find((each) => each.index === index)?.title ?? []);
  return titles.length < 2 ? titles.join('') : `${titles.slice(0, -1).join(', ')} and ${titles.at(-1)}`;
}

/** Of one finding at most this many places are shown, and none that is this near to another, in nanometres. */
const mostPlaces = 6;
const apart = 9_000_000;

/** The places of a finding that are shown: the first ones, so far apart that their numbers can be read in a picture. */
export function shownPlaces(places: readonly Point[]): readonly Point[] {
  const shown: Point[] = [];
  for (const place of places) {
    if (shown.length === mostPlaces) break;
    if (shown.every(({ x, y }) => Math.hypot(x - place.x, y - place.y) >= apart)) shown.push(place);
  }
  return shown;
}
