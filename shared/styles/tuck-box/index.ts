import { mm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { D, dimensionNames, g, H, k, l, W } from './dimensions.ts';
import { boundsOf, layers, unknownsOf } from './model.ts';
import { pockets, program } from './program.ts';
import { tuckBoxSpec } from './spec.ts';

/*
 * Four walls glued or locked into a tube, which lies flat for storage and is set up square, with a lid and a bottom that hang on the
 * back and are tucked in behind the front. Columns: tab, side, front, side, back. Rows: tuck flap, lid, wall, bottom, tuck
 * flap; dust flaps at the sides.
 */

/** A box for a thick stack. */
export const tuckBox = withSpec(tuckBoxSpec, {
  name: 'tuck-box',
  title: 'Tuck box',
  summary:
    'A box for a thick stack: four walls glued or locked into a tube, with lid and bottom that tuck in behind the front.',
  words: {
    piece: 'box',
    flat: 'flat tube',
    ready: 'closed',
    inside: 'as it is stored',
    ajar: { heading: 'lid open', description: 'The box stands with its lid open' },
    sizedBy: 'the width and height of its front',
  },
  dimensionNames,
  pockets,
  seams: [],
  face: 'front',
  covers: [
    { name: 'front', side: 'outside' },
    { name: 'back', side: 'inside' },
  ],
  pose: { turned: 148, tipped: 26 },
  layers,
  depth: l,
  // what carton engineers add to the contents: 3 to 5 mm in width, 1 to 3 mm in height
  usualEase: { across: mm(3), along: mm(2) },
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d) => ({
    width: 2 * at(d, W) + 2 * at(d, D) + at(d, g),
    height: at(d, H) + 2 * at(d, l) + 2 * at(d, k),
  }),
  closed: (d) => ({ width: at(d, W), height: at(d, H), depth: at(d, D), thickness: at(d, D) }),
  flat: (d) => ({ width: at(d, W) + at(d, D), height: at(d, H) + 2 * at(d, l) + 2 * at(d, k) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness: () => 0,
  program,
});
