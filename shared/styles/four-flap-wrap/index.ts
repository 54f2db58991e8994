import { mm } from '../../lengths/nanometres.ts';
import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { b, dimensionNames, e1, e2, e3, H, s, t, W } from './dimensions.ts';
import { boundsOf, layers, oddness, unknownsOf } from './model.ts';
import { pockets, program } from './program.ts';
import { fourFlapWrapSpec } from './spec.ts';

/*
 * A base with a flap on a hinge at each of its four sides, as libraries wrap what they keep: the side flaps close first,
 * then the bottom flap, then the top flap, each hinge deeper than the one before by the paper that it goes around.
 */

const blank = (d: Readonly<Record<string, number>>) => ({
  width: at(d, W) + 2 * at(d, e1) + 2 * at(d, s),
  height: at(d, H) + at(d, e2) + at(d, e3) + at(d, b) + at(d, t),
});

/** A wrap for a stack of cards. */
export const fourFlapWrap = withSpec(fourFlapWrapSpec, {
  name: 'four-flap-wrap',
  title: 'Four-flap wrap',
  summary: 'A base with a flap on a hinge at each side; the four close over a stack of cards, without glue.',
  words: {
    piece: 'wrap',
    flat: 'open wrap',
    ready: 'closed',
    inside: 'where the contents lie',
    ajar: { heading: 'closing', description: 'The wrap lies on the table, its flaps half closed' },
    sizedBy: 'the width and height of the base',
  },
  dimensionNames,
  pockets,
  seams: [],
  face: 'base',
  covers: [
    { name: 'front', side: 'inside' },
    { name: 'back', side: 'outside' },
  ],
  pose: { spun: 28, turned: 0, tipped: -48 },
  layers,
  depth: e3,
  // the flaps are closed by hand, so little play is enough; library wraps leave 1 to 2 mm
  usualEase: { along: mm(2), across: mm(2) },
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank,
  closed: (d) => ({ width: at(d, W), height: at(d, H), depth: at(d, e3) }),
  flat: blank,
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness,
  program,
});
