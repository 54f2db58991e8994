import type { Plan } from '../solver/plan.ts';
import { pocketsOf } from '../styles/pockets-of.ts';
import { styleOf } from '../styles/registry.ts';
import type { Folded } from './proof-of.ts';
import { type Region, regionsFrom, type Side } from './regions.ts';
import { spotsOf } from './spots.ts';
import { facesSquareTo } from './square-faces.ts';

/** One way of looking at the piece, with all that can be seen. */
export interface Appearance {
  /** `outside`, `inside`, a cover's name, or `pockets, flaps lifted`. */
  readonly view: string;
  readonly regions: readonly Region[];
}

/** Where the outside print's up points in pattern coordinates: the sheet's height runs up the print. */
export const printUp = ({ arrangement }: Plan): { readonly x: number; readonly y: number } =>
  arrangement.sheetTurned ? { x: -1, y: 0 } : { x: 0, y: -1 };

/** The piece from every side: open flat from outside and inside, closed, and with the pockets' fronts lifted. */
export function appearancesOf(folded: Folded): readonly Appearance[] {
  const { plan, proof } = folded;
  const { covers } = styleOf(plan.spec);
  const pockets = pocketsOf(plan);
  const up = printUp(plan);
  const fronts = new Set(pockets.flatMap(({ front }) => front));
  const look = (
    view: Appearance['view'],
    side: Side,
    there = proof.spots,
    hidden?: (panel: string) => boolean,
  ) => ({
    view,
    regions: regionsFrom(side, there, up, hidden),
  });
  return [
    look('outside', 'outside'),
    look('inside', 'inside'),
    ...covers.map(({ name, side }) => look(name, 'inside', spotsOf(facesSquareTo(folded, side)))),
    ...(fronts.size === 0
      ? []
      : [look('pockets, flaps lifted', 'inside', proof.spots, (panel) => fronts.has(panel))]),
  ].filter(({ regions }) => regions.length > 0);
}
