import fc from 'fast-check';
import { holding, type StyleCase, specsOf } from './style-case.ts';

export const slipSleeveCase: StyleCase = {
  style: 'slip-sleeve',
  example: { style: 'slip-sleeve', contents: { item: { size: 'iso-a6' }, perPocket: 3 } },
  specs: specsOf('slip-sleeve', {
    ...holding(5),
    mouth: fc.constantFrom(undefined, 'notched', 'straight'),
  }),
  // tab, back, front; panel, tab
  blankByHand: (mm) => [mm('tab') + 2 * mm('panel.width'), mm('panel.height') + mm('tab')],
};
