import { holding, join, type StyleCase, specsOf } from './style-case.ts';

export const tuckBoxCase: StyleCase = {
  style: 'tuck-box',
  example: { style: 'tuck-box', contents: { item: { size: 'iso-a6' }, perPocket: 24 } },
  specs: specsOf('tuck-box', { ...holding(40), join }),
  // tab, side, front, side, back; tuck flap, lid, wall, bottom, tuck flap
  blankByHand: (mm) => [
    mm('tab') + 2 * mm('depth') + 2 * mm('panel.width'),
    2 * mm('tuck') + 2 * mm('lid') + mm('panel.height'),
  ],
};
