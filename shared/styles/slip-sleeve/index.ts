import { mm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { b, dimensionNames, H, W } from './dimensions.ts';
import { boundsOf, layers, unknownsOf } from './model.ts';
import { pockets, program } from './program.ts';
import { slipSleeveSpec } from './spec.ts';

/*
 * A back with a tab at its side and one at its bottom, and a front that folds over and is glued to both: open at the top,
 * with a notch for the thumb.
 */

/** A sleeve with one pocket. */
export const slipSleeve = withSpec(slipSleeveSpec, {
  name: 'slip-sleeve',
  title: 'Slip sleeve',
  summary:
    'A flat pocket with a thumb notch: a back with two tabs, and a front that folds over and is glued to them.',
  words: {
    piece: 'sleeve',
    flat: 'sleeve',
    ready: 'finished',
    inside: 'with its front up',
    ajar: { heading: 'before it is glued', description: 'The sleeve with its front half folded over' },
    sizedBy: 'its width and height',
  },
  dimensionNames,
  pockets,
  seams: [],
  face: 'back',
  covers: [
    { name: 'front', side: 'inside' },
    { name: 'back', side: 'outside' },
  ],
  pose: { turned: -24, tipped: 22 },
  layers,
  // its contents may come up to the mouth
  usualEase: { across: mm(3) },
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d) => ({ width: 2 * at(d, W) + at(d, b), height: at(d, H) + at(d, b) }),
  closed: (d) => ({ width: at(d, W), height: at(d, H) }),
  flat: (d) => ({ width: at(d, W), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness: () => 0,
  program,
});
