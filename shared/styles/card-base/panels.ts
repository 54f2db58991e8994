import type { Nm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { g, n, W } from './dimensions.ts';
import type { CardBaseSpec } from './spec.ts';

/** One panel of a card base, from the left with the inside face up. */
export interface CardPanel {
  readonly name: string;
  readonly width: Nm;
}

export const foldOf = ({ fold = 'single' }: CardBaseSpec) => fold;

/** How many panels there are. */
export function panelCount(spec: CardBaseSpec): number {
  const fold = foldOf(spec);
  if (fold === 'single') return 2;
  return fold === 'gate' ? 3 : (spec.panels ?? 3);
}

/** How many steps a roll's panels are narrower together than if each were as wide as the front. */
export const stepsOf = (count: number): number => ((count - 2) * (count - 1)) / 2;

/** The panels from left to right. */
export function panelsOf(spec: CardBaseSpec, d: Dimensions): readonly CardPanel[] {
  const width = at(d, W);
  if (foldOf(spec) === 'gate') {
    const left = Math.floor((width - at(d, g)) / 2);
    return [
      { name: 'left door', width: left },
      { name: 'back', width },
      { name: 'right door', width: width - at(d, g) - left },
    ];
  }
  const count = panelCount(spec);
  return Array.from({ length: count }, (_, index) => ({
    name: index === 0 ? 'front' : index === 1 ? 'back' : `panel ${index + 1}`,
    width: width - Math.max(0, index - 1) * at(d, n),
  }));
}
