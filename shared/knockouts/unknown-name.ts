import type { Fault } from '../lettering/fault.ts';
import { editDistance } from '../sizes/edit-distance.ts';

/** Longer than any name here; bounds the work for any text. */
const longest = 80;

/** A fault for a name that is none of those that are known, with the nearest of them and all. */
export function unknownName(
  what: string,
  name: string,
  known: readonly string[],
  path: Fault['path'],
): Fault {
  const [nearest] = known
    .map((each) => ({ each, far: editDistance(name.slice(0, longest).toLowerCase(), each.toLowerCase()) }))
    .toSorted((one, other) => one.far - other.far);
  const meant =
    nearest && nearest.far <= Math.max(1, name.length / 3) ? `did you mean "${nearest.each}"? ` : '';
  return {
    path,
    message: `there is no ${what} "${name}"`,
    remedy: known.length === 0 ? `there is none at all` : `${meant}known here: ${known.join(', ')}`,
  };
}
