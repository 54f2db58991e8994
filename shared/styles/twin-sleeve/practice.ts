import { inch, mm } from '../../lengths/nanometres.ts';

/** Common practice, no published source, unless a line says otherwise. */
export const practice = Object.freeze({
  /** Glue stays this far from each edge of what it holds. */
  glueMargin: mm(1.5),
  hem: inch(1 / 2),
  overlap: inch(1 / 2),
  spine: inch(1 / 2),
  /** Two scores closer than this are hard to make: 1/8 in, as cover printers advise. */
  scoreSpacing: mm(3.2),
  /** Width of a scoring tool's tip. */
  scoringTip: mm(1),
  /** A sheet that is larger than the blank by less than this cannot be trimmed well. */
  sliver: mm(3),
  /** A free edge stays this far from the next score. */
  edgeToScore: mm(3),
  /** Share of the panel that a hem or the top flap takes where there is a choice. */
  hemShare: 0.42,
  deepestHemShare: 0.5,
  topFlapShare: 0.43,
  deepestOverlapShare: 1 / 3,
  /** An item rattles with more play than this. */
  mostPlay: inch(3 / 4),
});
