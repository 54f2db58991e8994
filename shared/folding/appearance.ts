import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import type { Folded } from './proof-of.ts';
import { type Region, regionsFrom, type Side } from './regions.ts';
import { spineLines } from './spine-lines.ts';

/** One way of looking at the folder, with all that can be seen. */
export interface Appearance {
  readonly view: 'outside' | 'inside' | 'front cover' | 'back cover' | 'pockets, flaps lifted';
  readonly regions: readonly Region[];
}

/** Where the outside print's up points in pattern coordinates: the sheet's height runs up the print. */
export const printUp = ({ arrangement }: Plan): { readonly x: number; readonly y: number } =>
  arrangement.sheetTurned ? { x: -1, y: 0 } : { x: 0, y: -1 };

/** The folder from every side: open flat from outside and inside, closed, and with the pockets' fronts lifted. */
export function appearancesOf({ plan, pattern, proof }: Folded): readonly Appearance[] {
  const { spots } = proof;
  const up = printUp(plan);
  const fronts = new Set(styleOf(plan.spec).pockets.flatMap(({ front }) => front));
  const { first, second } = spineLines(pattern);
  const look = (
    view: Appearance['view'],
    side: Side,
    there = spots,
    hidden?: (panel: string) => boolean,
  ) => ({
    view,
    regions: regionsFrom(side, there, up, hidden),
  });
  return [
    look('outside', 'outside'),
    look('inside', 'inside'),
    look(
      'front cover',
      'outside',
      spots.filter(({ x }) => x < first),
    ),
    look(
      'back cover',
      'outside',
      spots.filter(({ x }) => x > second),
    ),
    look('pockets, flaps lifted', 'inside', spots, (panel) => fronts.has(panel)),
  ].filter(({ regions }) => regions.length > 0);
}
