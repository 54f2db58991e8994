import { contentsDefaults } from '../contents/defaults.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { KnockoutSpec } from './knockout-spec.ts';

/**
 * How much thicker raised frames on pockets make what the closed folder holds, in nanometres, less what closing
 * presses flat: on each pocket the thickest counts. Frames on the outside of a cover take no room inside.
 */
export function raisedOnPockets(
  knockouts: readonly KnockoutSpec[] | undefined,
  pockets: readonly { readonly name: string }[],
): Nm {
  if (!knockouts || knockouts.length === 0) return 0;
  const sum = pockets.reduce((total, { name }) => {
    const raised = knockouts.map((knockout) =>
      knockout.kind === 'figure' && knockout.on.place === name ? (knockout.inlay?.frame?.raised ?? 0) : 0,
    );
    return total + Math.max(0, ...raised);
  }, 0);
  return Math.round(sum * (1 - contentsDefaults.raisedSquash));
}
