import fc from 'fast-check';
import { easySleeve, sleeves } from '../sleeves.ts';
import { holding, type StyleCase, specsOf } from './style-case.ts';

export const twinSleeveCase: StyleCase = {
  style: 'twin-sleeve',
  example: { ...easySleeve, contents: { item: { width: '80 mm', height: '120 mm' } } },
  specs: fc.oneof(
    sleeves,
    specsOf('twin-sleeve', {
      ...holding(3),
      hem: fc.constantFrom(undefined, { turn: 'in' }),
      corners: fc.constantFrom(undefined, 'mitred'),
      seam: fc.constantFrom(undefined, 'flat'),
    }),
  ),
  // hem, panel, spine, panel, hem; top flap, panel, bottom flap
  blankByHand: (mm) => [
    2 * mm('hem') + 2 * mm('panel.width') + mm('spine'),
    mm('topFlap') + mm('panel.height') + mm('bottomFlap'),
  ],
};
