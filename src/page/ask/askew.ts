import { appearancesOf } from '../../../shared/folding/appearance.ts';
import { regionsPointing } from '../../../shared/folding/print-shown.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import type { Direction } from '../../../shared/folding/regions.ts';
import { labelOf, namesIn } from '../../../shared/views/part-names.ts';
import type { Askew } from './answer.ts';

const ways = ['inverted', 'turned left', 'turned right'] as const satisfies readonly Direction[];

/** Where a one-way print does not point up, by the names that are written on the parts: each once. */
export function askewIn(folded: Folded): readonly Askew[] {
  const { sheet } = folded.plan.arrangement;
  if (!sheet.oneWay) return [];
  const names = namesIn(folded);
  return appearancesOf(folded).flatMap(({ view, regions }) =>
    ways.flatMap((way) => {
      const parts = regionsPointing(sheet, regions, way);
      const labels = [...new Set(parts.map(({ part }) => labelOf(names, part).one))];
      return labels.length === 0 ? [] : [{ view, way, parts: labels }];
    }),
  );
}
