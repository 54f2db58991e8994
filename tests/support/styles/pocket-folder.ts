import { holding, join, type StyleCase, specsOf } from './style-case.ts';

export const pocketFolderCase: StyleCase = {
  style: 'pocket-folder',
  example: {
    style: 'pocket-folder',
    contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
  },
  specs: specsOf('pocket-folder', { ...holding(4), join }),
  // tab, panel, spine, panel, tab; panel, pocket
  blankByHand: (mm) => [
    2 * mm('tab') + 2 * mm('panel.width') + mm('spine'),
    mm('panel.height') + mm('pocket'),
  ],
};
