import fc from 'fast-check';
import type { FolderSpec } from '../../../shared/spec/folder-spec.ts';
import { around, cardSizes, lengthOf, type StyleCase, specsOf } from './style-case.ts';

/** Panels side by side: their widths in panels, steps and gaps. */
function widthOf(mm: (dimension: string) => number, spec: FolderSpec): number {
  if (spec.style !== 'card-base') throw new Error('that is no card');
  const [panel, step] = [mm('panel.width'), mm('step')];
  if (spec.fold === 'gate') return panel + panel - mm('gap');
  if (spec.fold === undefined || spec.fold === 'single') return 2 * panel;
  // the third panel of a roll is one step narrower than the back, the fourth two, and so on
  const widths = { 2: 2 * panel, 3: 3 * panel - step, 4: 4 * panel - 3 * step, 5: 5 * panel - 6 * step };
  const found = { ...widths, 6: 6 * panel - 10 * step }[spec.panels ?? 3];
  if (found === undefined) throw new Error(`nobody added up ${spec.panels} panels`);
  return found;
}

export const cardBaseCase: StyleCase = {
  style: 'card-base',
  example: { style: 'card-base', card: { size: 'iso-a6' } },
  specs: specsOf('card-base', {
    ...around,
    card: fc.oneof(
      fc.record({ size: cardSizes, turned: fc.constantFrom(undefined, true) }),
      fc.record({ width: lengthOf(50, 150), height: lengthOf(50, 200) }),
    ),
    fold: fc.constantFrom(undefined, 'single', 'zigzag', 'roll', 'gate'),
    panels: fc.constantFrom(undefined, 2, 3, 4, 5),
  }),
  blankByHand: (mm, spec) => [widthOf(mm, spec), mm('panel.height')],
};
