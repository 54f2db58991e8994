import fc from 'fast-check';
import { holding, type StyleCase, specsOf } from './style-case.ts';

export const envelopeCase: StyleCase = {
  style: 'envelope',
  example: { style: 'envelope', contents: { item: { size: 'iso-a6' } } },
  specs: specsOf('envelope', {
    ...holding(2),
    flaps: fc.constantFrom(undefined, 'square', 'diagonal', 'diagonal'),
  }),
  // side, front, side; closing flap, front, back
  blankByHand: (mm) => [2 * mm('side') + mm('panel.width'), mm('flap') + mm('panel.height') + mm('back')],
};
