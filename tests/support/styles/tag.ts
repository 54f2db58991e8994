import fc from 'fast-check';
import { around, lengthOf, type StyleCase, specsOf } from './style-case.ts';

export const tagCase: StyleCase = {
  style: 'tag',
  example: { style: 'tag' },
  specs: specsOf('tag', {
    ...around,
    dimensions: fc.constantFrom(
      undefined,
      ...[30, 45, 70].map((side) => ({ panel: { width: `${side} mm` } })),
    ),
    units: fc.constantFrom(undefined, 'mm', 'in'),
    stock: fc.oneof(
      fc.constant(undefined),
      fc.record({ width: lengthOf(30, 300), height: lengthOf(60, 300) }),
    ),
  }),
  blankByHand: (mm) => [mm('panel.width'), mm('panel.height')],
};
