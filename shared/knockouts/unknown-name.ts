import type { Fault } from '../lettering/fault.ts';
import { nearestName } from '../spec/nearest-name.ts';

/** A fault for a name that is none of those that are known, with the nearest of them and all. */
export function unknownName(
  what: string,
  name: string,
  known: readonly string[],
  path: Fault['path'],
): Fault {
  const nearest = nearestName(name, known);
  const meant = nearest === undefined ? '' : `did you mean "${nearest}"? `;
  return {
    path,
    message: `there is no ${what} "${name}"`,
    remedy: known.length === 0 ? `there is none at all` : `${meant}known here: ${known.join(', ')}`,
  };
}
