import { set } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import { type Pair, pairs } from './fits.ts';
import type { Plan } from './plan.ts';
import { mostPerPocket, tried } from './remedies.ts';

/** Contents that a sheet can be made into a folder for. */
export interface Possibility extends Pair {
  /** The largest number per pocket that still folds from the sheet, at most {@link countedTo}. */
  readonly perPocket: number;
  /** The plan for that number. */
  readonly plan: Plan;
}

/** Counting stops here: a thicker stack of cards is no folder's. */
export const countedTo = 12;

/** All published contents that a folder from the spec's sheet can hold, the largest first. */
export function possibleFrom(spec: FolderSpec): readonly Possibility[] {
  if (styleOf(spec).pockets.length === 0) return [];
  return pairs(spec.measure).flatMap((pair) => {
    const contents = {
      item: { size: pair.item.id },
      ...(pair.envelope ? { envelope: { size: pair.envelope.id } } : {}),
    };
    const asking = { ...spec, contents: { ...contents, perPocket: 1 } } as FolderSpec;
    const perPocket = mostPerPocket(asking, countedTo);
    if (perPocket === 0) return [];
    return tried(asking, { message: '', changes: [set('/contents/perPocket', perPocket)] }).map(
      ({ plan }) => ({
        ...pair,
        perPocket,
        plan,
      }),
    );
  });
}
