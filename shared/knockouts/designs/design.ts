import type { Folded } from '../../folding/proof-of.ts';
import type { Shape } from '../../geometry/contour.ts';
import type { Fault } from '../../lettering/fault.ts';
import type { FigureContext } from '../figure-of.ts';
import type { KnockoutOf } from '../knockout-spec.ts';
import type { Place } from '../places.ts';
import { unknownName } from '../unknown-name.ts';

/** Which layers a knockout is meant for, by name where not by what is seen. */
export type Meant =
  | 'seen-layer'
  | 'every-layer'
  | { readonly panels: readonly string[] }
  | { readonly from: string; readonly to: string };

/** A knockout as its maker designs it: a figure on a place, in the place's coordinates. */
export interface Design {
  readonly place: Place;
  readonly figure: Shape;
  readonly meant: Meant;
  /** It reaches over an edge on purpose, or is narrow on purpose. */
  readonly atEdge?: true;
  readonly narrow?: true;
}

export type Designed =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Everything that a design is made from. */
export interface DesignContext extends FigureContext {
  readonly folded: Folded;
  readonly places: readonly Place[];
  /** Figures' corners are rounded to this, in nanometres; 0 keeps them. */
  readonly cornerRadius: number;
}

export const refused = (...faults: readonly Fault[]): Designed => ({ ok: false, faults });

/** Designs something on a place, or refuses a name that no place has. */
export function onPlace(
  name: string,
  path: Fault['path'],
  { places }: DesignContext,
  design: (place: Place) => Designed,
): Designed {
  const place = places.find((each) => each.name === name);
  if (place) return design(place);
  const known = places.map((each) => each.name);
  return refused(unknownName('place', name, known, path));
}

/** Layers as a spec asks for them. */
export function meantBy(through: KnockoutOf<'figure'>['through'] = 'seen-layer'): Meant {
  if (typeof through === 'string') return through;
  return { from: through.from, to: through.to ?? through.from };
}
