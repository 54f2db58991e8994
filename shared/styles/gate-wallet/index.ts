import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { D, D2, dimensionNames, H, p, S, S2, W } from './dimensions.ts';
import { boundsOf, isOverlapping, layers, oddness, unknownsOf } from './model.ts';
import { pockets, program } from './program.ts';
import { gateWalletSpec } from './spec.ts';

/*
 * A middle with a pocket that is folded up from its bottom edge, and at each side a door on a hinge of two scores: they meet
 * in the middle, or the right one lies over the left. Columns: door, hinge, middle, hinge, door. Rows: panel, pocket.
 */

/** A wallet with two doors. */
export const gateWallet = withSpec(gateWalletSpec, {
  name: 'gate-wallet',
  title: 'Gate wallet',
  summary: 'A middle with a pocket, and two doors that meet over it or lie over each other.',
  words: {
    piece: 'wallet',
    flat: 'open wallet',
    ready: 'closed',
    inside: 'where the pocket is',
    ajar: { heading: 'doors half open', description: 'The wallet stands with its doors half open' },
    filled: 'Then close the doors, the left one first.',
    sizedBy: 'the width and height of a panel',
    thickest: { where: 'where the tabs lie' },
  },
  dimensionNames,
  pockets,
  seams: [],
  face: 'middle',
  covers: [
    { name: 'front', side: 'inside' },
    { name: 'back', side: 'outside' },
  ],
  pose: { turned: -22, tipped: 22 },
  layers,
  depth: S,
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d) => ({
    width: at(d, W) + at(d, S) + at(d, S2) + at(d, D) + at(d, D2),
    height: at(d, H) + at(d, p),
  }),
  closed: (d, spec) => ({
    width: at(d, W),
    height: at(d, H),
    depth: at(d, S2),
    layers: isOverlapping(spec) ? layers + 1 : layers,
  }),
  flat: (d) => ({
    width: at(d, W) + at(d, S) + at(d, S2) + at(d, D) + at(d, D2),
    height: at(d, H),
  }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness,
  program,
});
