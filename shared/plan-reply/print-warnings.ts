import type { Appearance } from '../folding/appearance.ts';
import { regionsPointing } from '../folding/print-shown.ts';
import type { Direction } from '../folding/regions.ts';
import type { Plan } from '../solver/plan.ts';
import type { Warning } from './warning.ts';

const words: Readonly<Record<Exclude<Direction, 'upright'>, string>> = {
  inverted: 'stands on its head',
  'turned left': 'lies turned to the left',
  'turned right': 'lies turned to the right',
};

const directions = Object.keys(words) as (keyof typeof words)[];

/** Where a one-way print does not stand upright, one warning for each way of looking, from the folded form. */
export function printWarnings(plan: Plan, appearances: readonly Appearance[]): readonly Warning[] {
  const { sheet } = plan.arrangement;
  if (!sheet.oneWay) return [];
  return appearances.flatMap(({ view, regions }) => {
    const clauses = directions.flatMap((direction) => {
      const parts = regionsPointing(sheet, regions, direction);
      const names = [...new Set(parts.map(({ part, face }) => `${part} (${face} face)`))];
      return names.length === 0 ? [] : [`${words[direction]} on ${names.join(', ')}`];
    });
    if (clauses.length === 0) return [];
    return [
      {
        code: 'print-not-upright',
        path: `${sheet.path ?? '/stock'}/oneWay`,
        message: `seen from ${view}, the one-way print ${clauses.join('; it ')}`,
        remedy:
          'a print without direction, or the other face of the sheet outside if it has none; a flap that is folded over a level line always turns its print upside down',
      },
    ];
  });
}
