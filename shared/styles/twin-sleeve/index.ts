import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { boundsOf, layers } from './bounds.ts';
import { b, blank, dimensionNames, H, h, o, S, t, W } from './dimensions.ts';
import { sleeveSeams } from './panels.ts';
import { pockets } from './pockets.ts';
import { practice } from './practice.ts';
import { program } from './program.ts';
import { twinSleeveSpec } from './spec.ts';
import { unknownsOf } from './wishes.ts';

/*
 * One rectangle becomes a flat sleeve, open at both ends and hemmed there; the sleeve folds on a spine into a
 * book with two pockets. Columns, left to right: hem, panel, spine, panel, hem. Rows, top to bottom: top flap,
 * panel, bottom flap.
 */

/** The first style: a hemmed sleeve that folds on a spine into a book with two pockets. */
export const twinSleeve = withSpec(twinSleeveSpec, {
  name: 'twin-sleeve',
  title: 'Twin sleeve',
  summary:
    'One rectangle becomes a flat sleeve, hemmed at its two open ends, and folds on a spine into a book with two pockets.',
  words: {
    piece: 'folder',
    flat: 'flat sleeve',
    ready: 'closed',
    inside: 'where the pockets are',
    ajar: {
      heading: 'standing, half open',
      description:
        'The folder stands like a half open book. At the left is the front cover from outside, at the right the pocket on the back cover',
    },
    filled: 'Then close the folder.',
    sizedBy: 'the width and height of a panel',
    thickest: { where: 'where hems and seam meet', remedy: 'mitred corners' },
  },
  dimensionNames,
  pockets,
  seams: sleeveSeams,
  face: 'front',
  covers: [
    { name: 'front cover', side: 'outside', beside: { at: 'left', text: 'spine' } },
    { name: 'back cover', side: 'inside', beside: { at: 'right', text: 'spine' } },
  ],
  pose: { root: 'spine', turned: 62, tipped: 24 },
  layers,
  depth: S,
  cornersAt: '/corners',
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => ({ ...values, [b]: at(values, H) + at(values, o) - at(values, t) }),
  blank,
  closed: (d) => ({ width: at(d, W), height: at(d, H), depth: at(d, S) }),
  flat: (d) => ({ width: 2 * at(d, W) + at(d, S), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness: (d) =>
    Math.abs(at(d, h) / at(d, W) - practice.hemShare) + Math.abs(at(d, t) / at(d, H) - practice.topFlapShare),
  program,
});
