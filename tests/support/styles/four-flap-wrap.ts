import { holding, type StyleCase, specsOf } from './style-case.ts';

export const fourFlapWrapCase: StyleCase = {
  style: 'four-flap-wrap',
  example: { style: 'four-flap-wrap', contents: { item: { size: 'iso-a6' }, perPocket: 8 } },
  specs: specsOf('four-flap-wrap', holding(20)),
  // flap, hinge, base, hinge, flap, both ways
  blankByHand: (mm) => [
    2 * mm('sideFlap') + 2 * mm('hinge') + mm('panel.width'),
    mm('topFlap') + mm('topHinge') + mm('panel.height') + mm('bottomHinge') + mm('bottomFlap'),
  ],
};
