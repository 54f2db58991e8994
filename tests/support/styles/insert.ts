import fc from 'fast-check';
import { around, cardSizes, lengthOf, type StyleCase, specsOf } from './style-case.ts';

export const insertCase: StyleCase = {
  style: 'insert',
  example: { style: 'insert', card: { size: 'iso-a6' }, tab: { place: 2, of: 3 } },
  specs: specsOf('insert', {
    ...around,
    card: fc.oneof(
      fc.record({ size: cardSizes, turned: fc.constantFrom(undefined, true) }),
      fc.record({ width: lengthOf(50, 150), height: lengthOf(50, 200) }),
    ),
    tab: fc.constantFrom(undefined, { place: 1, of: 1 }, { place: 3, of: 3 }, { place: 2, of: 5 }),
  }),
  blankByHand: (mm) => [mm('panel.width'), mm('panel.height') + mm('tab.height')],
};
