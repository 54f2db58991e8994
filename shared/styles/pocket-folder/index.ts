import { at } from '../common/dimension.ts';
import { withSpec } from '../with-spec.ts';
import { b, dimensionNames, H, p, S, W } from './dimensions.ts';
import { boundsOf, layers, oddness, unknownsOf } from './model.ts';
import { pockets, pocketsFor, program } from './program.ts';
import { pocketFolderSpec } from './spec.ts';

/*
 * Two covers with a spine between them, and on each a pocket that is folded up from the bottom edge. Glued, it is held at
 * its outer end by a tapered tab, at the spine by a strip beside a notch; locked, at both ends by tabs whose tongues go
 * through the cover. Columns, left to right: tab, panel, spine, panel, tab. Rows, top to bottom: panel, pocket.
 */

/** A folder with a spine and two pockets. */
export const pocketFolder = withSpec(pocketFolderSpec, {
  name: 'pocket-folder',
  title: 'Pocket folder',
  summary:
    'Two covers with a spine between them, and on each a pocket that is folded up from the bottom, glued or locked.',
  words: {
    piece: 'folder',
    flat: 'open folder',
    ready: 'closed',
    inside: 'where the pockets are',
    ajar: {
      heading: 'standing, half open',
      description:
        'The folder stands like a half open book. At the left is the front cover from outside, at the right the pocket on the back cover',
    },
    filled: 'Then close the folder.',
    sizedBy: 'the width and height of a panel',
    thickest: { where: 'where the tabs lie' },
  },
  dimensionNames,
  pockets,
  pocketsIn: (_, spec) => pocketsFor(spec),
  seams: [],
  face: 'front',
  covers: [
    { name: 'front cover', side: 'outside', beside: { at: 'left', text: 'spine' } },
    { name: 'back cover', side: 'inside', beside: { at: 'right', text: 'spine' } },
  ],
  pose: { root: 'spine', turned: 62, tipped: 24 },
  layers,
  depth: S,
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => values,
  blank: (d) => ({ width: 2 * at(d, W) + at(d, S) + 2 * at(d, b), height: at(d, H) + at(d, p) }),
  closed: (d) => ({ width: at(d, W), height: at(d, H), depth: at(d, S) }),
  flat: (d) => ({ width: 2 * at(d, W) + at(d, S), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness,
  program,
});
