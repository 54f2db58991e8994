import { holding, join, type StyleCase, specsOf } from './style-case.ts';

export const bellyBandCase: StyleCase = {
  style: 'belly-band',
  example: { style: 'belly-band', contents: { item: { size: 'iso-a6' }, perPocket: 8 } },
  // thin stacks with one fold at each side as well as thick ones with two
  specs: specsOf('belly-band', { ...holding(12), join }),
  // once around, and the overlap
  blankByHand: (mm) => [2 * mm('panel.width') + 2 * mm('side') + mm('overlap'), mm('panel.height')],
};
