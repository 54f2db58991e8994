import type { Style } from '../style.ts';
import { boundsOf, layers } from './bounds.ts';
import { at, b, blank, dimensionNames, H, h, o, S, t, W } from './dimensions.ts';
import { sleeveSeams } from './panels.ts';
import { pockets } from './pockets.ts';
import { practice } from './practice.ts';
import { program } from './program.ts';
import type { TwinSleeveSpec } from './spec.ts';
import { unknownsOf } from './wishes.ts';

/*
 * One rectangle becomes a flat sleeve, open at both ends and hemmed there; the sleeve folds on a spine into a
 * book with two pockets. Columns, left to right: hem, panel, spine, panel, hem. Rows, top to bottom: top flap,
 * panel, bottom flap.
 */

/** The first style: a hemmed sleeve that folds on a spine into a book with two pockets. */
export const twinSleeve: Style<TwinSleeveSpec> = {
  name: 'twin-sleeve',
  title: 'Twin sleeve',
  summary:
    'One rectangle becomes a flat sleeve, hemmed at its two open ends, and folds on a spine into a book with two pockets.',
  dimensionNames,
  pockets,
  seams: sleeveSeams,
  layers,
  givenSpine: (spec) => spec.dimensions?.spine,
  saysHowLarge: ({ dimensions }) =>
    dimensions?.panel?.width !== undefined && dimensions.panel.height !== undefined,
  spine: (d) => at(d, S),
  model: (spec, situation) => ({ unknowns: unknownsOf(spec, situation), bounds: boundsOf(spec, situation) }),
  dimensions: (values) => ({ ...values, [b]: at(values, H) + at(values, o) - at(values, t) }),
  blank,
  closed: (d) => ({ width: at(d, W), height: at(d, H) }),
  flat: (d) => ({ width: 2 * at(d, W) + at(d, S), height: at(d, H) }),
  pocket: (d) => ({ width: at(d, W), height: at(d, H) }),
  oddness: (d) =>
    Math.abs(at(d, h) / at(d, W) - practice.hemShare) + Math.abs(at(d, t) / at(d, H) - practice.topFlapShare),
  program,
};
