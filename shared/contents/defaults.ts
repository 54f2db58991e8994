import { mm } from '../lengths/nanometres.ts';

/**
 * Numbers that makers use when they measure nothing. All are common practice without a published source,
 * unless a line says otherwise, and a spec may replace each of them.
 */
export const contentsDefaults = Object.freeze({
  /** Card base, one sheet: cover stock of about 270 g/m². */
  cardCaliper: mm(0.33),
  /** Envelope paper of about 90-105 g/m². */
  envelopeCaliper: mm(0.12),
  /** A closed envelope, counted as postal services do: front, back and the seams' overlap. */
  envelopeLayers: 4,
  /** A folded card has two layers, a flat one has one. */
  layers: { folded: 2, flat: 1 },
  /** How much of a raised decoration's height hand pressure takes away. */
  raisedSquash: 0.2,
  /** A stack pressed by hand is thicker than the sum of its sheets by this factor. */
  packing: { pressed: 1.15, loose: 1.4 },
  /** Left free on the spine so that the folder closes without force. */
  spineEase: mm(1),
  /** Least play of the item inside a pocket, along the closed direction. */
  easeAlong: mm(3),
  /** Least play across: 3 mm to the spine score and 3 mm to the pocket's mouth. */
  easeAcross: mm(6),
});
