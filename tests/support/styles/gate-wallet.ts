import fc from 'fast-check';
import { holding, join, type StyleCase, specsOf } from './style-case.ts';

export const gateWalletCase: StyleCase = {
  style: 'gate-wallet',
  example: { style: 'gate-wallet', contents: { item: { size: 'iso-a6' }, perPocket: 4 } },
  specs: specsOf('gate-wallet', {
    ...holding(6),
    join,
    doors: fc.constantFrom(undefined, 'meeting', 'overlapping'),
  }),
  // door, hinge, middle, hinge, door; panel, pocket
  blankByHand: (mm) => [
    mm('leftDoor') + mm('hinge') + mm('panel.width') + mm('outerHinge') + mm('rightDoor'),
    mm('panel.height') + mm('pocket'),
  ],
};
