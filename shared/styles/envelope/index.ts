import { mm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { b, dimensionNames, f, H, s, W } from './dimensions.ts';
import { boundsOf, layers, oddness, unknownsOf } from './model.ts';
import { pockets, program } from './program.ts';
import { envelopeSpec } from './spec.ts';

/*
 * A front with a flap at each of its sides: the two at its sides fold in, the back folds up over them and is glued to
 * them, and the closing flap comes down over it with gum at its edge.
 */

/** An envelope with square or pointed flaps. */
export const envelope = withSpec(envelopeSpec, {
  name: 'envelope',
  title: 'Envelope',
  summary:
    'A front with four flaps: the sides fold in, the back is glued over them, and a gummed flap closes it.',
  words: {
    piece: 'envelope',
    flat: 'envelope',
    ready: 'closed',
    inside: 'where it closes',
    ajar: {
      heading: 'flap half open',
      description: 'The envelope from its back, the closing flap half open',
    },
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
  pose: { turned: -28, tipped: 22 },
  layers,
  // makers give 1/4 in on the length and half of it on the height
  usualEase: { along: mm(6), across: mm(3) },
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d) => ({ width: at(d, W) + 2 * at(d, s), height: at(d, H) + at(d, b) + at(d, f) }),
  closed: (d) => ({ width: at(d, W), height: at(d, H) }),
  flat: (d) => ({ width: at(d, W), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness,
  program,
});
