import type { Appearance } from '../folding/appearance.ts';
import type { Direction, Region } from '../folding/regions.ts';
import type { Plan } from '../solver/plan.ts';
import type { Warning } from './warnings.ts';

/** Pieces smaller than this, in square millimetres, are slivers at a fold. */
const sliver = 25;

const words: Readonly<Record<Exclude<Direction, 'upright'>, string>> = {
  inverted: 'stands on its head',
  'turned left': 'lies turned to the left',
  'turned right': 'lies turned to the right',
};

/** Where a one-way print does not stand upright, one warning for each view and direction, from the folded form. */
export function printWarnings(plan: Plan, appearances: readonly Appearance[]): readonly Warning[] {
  const { sheet } = plan.arrangement;
  if (!sheet.oneWay) return [];
  const directionOf = ({ face, direction }: Region): Direction | undefined => {
    if (sheet.printPair === 'head-to-foot') return direction.headToFoot;
    return sheet.printPair === 'same-way' || face === 'outside' ? direction.sameWay : undefined;
  };
  return appearances.flatMap(({ view, regions }) =>
    (Object.keys(words) as (keyof typeof words)[]).flatMap((direction) => {
      const parts = regions.filter((region) => region.area > sliver && directionOf(region) === direction);
      if (parts.length === 0) return [];
      const names = [...new Set(parts.map(({ part }) => part))].join('; ');
      return [
        {
          code: `print-${direction.replace(' ', '-')}`,
          path: `${sheet.path ?? '/stock'}/oneWay`,
          message: `seen from: ${view}, the one-way print ${words[direction]} on ${names}`,
          remedy:
            'take a print without direction, or put the side with the direction where it stands upright',
        },
      ];
    }),
  );
}
