import { mm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { D, dimensionNames, H, o, W } from './dimensions.ts';
import { boundsOf, layers, unknownsOf } from './model.ts';
import { pockets, pocketsIn, program } from './program.ts';
import { bellyBandSpec } from './spec.ts';

/*
 * A strip around a stack: end, side, front, side, end, its two ends glued or locked over each other at the back. Around
 * a thin stack each side is one fold.
 */

/** A band around a stack of cards. */
export const bellyBand = withSpec(bellyBandSpec, {
  name: 'belly-band',
  title: 'Belly band',
  summary: 'A strip that goes round a stack of cards and holds it together, glued or locked at the back.',
  words: {
    piece: 'band',
    flat: 'flattened band',
    ready: 'finished',
    inside: 'with its seam up',
    ajar: { heading: 'around its contents', description: 'The band stands open' },
    sizedBy: 'the width and height of its front',
  },
  dimensionNames,
  pockets,
  pocketsIn,
  seams: [],
  face: 'front',
  covers: [
    { name: 'front', side: 'outside' },
    { name: 'back', side: 'inside' },
  ],
  pose: { turned: 148, tipped: 28 },
  layers,
  depth: D,
  // a band that is not to slide off has no more play than 1 mm all round
  usualEase: { across: mm(1), spine: 0 },
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({
    unknowns: unknownsOf(situation),
    bounds: boundsOf(spec, situation),
  }),
  dimensions: (values) => values,
  blank: (d) => ({ width: 2 * at(d, W) + 2 * at(d, D) + at(d, o), height: at(d, H) }),
  closed: (d) => ({
    width: at(d, W),
    height: at(d, H),
    ...(at(d, D) === 0 ? {} : { depth: at(d, D) }),
  }),
  flat: (d) => ({ width: at(d, W) + at(d, D), height: at(d, H) }),
  oddness: () => 0,
  program,
});
