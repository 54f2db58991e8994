import { mm, type Nm } from '../../lengths/nanometres.ts';

/** What several styles rest on. Common practice, no published source, unless a line says otherwise. */
export const commonPractice = Object.freeze({
  /** Glue stays this far from each edge of what it holds. */
  glueMargin: mm(1.5),
  /** Two scores closer than this are hard to make: 1/8 in, as cover printers advise. */
  scoreSpacing: mm(3.2),
  /** Width of a scoring tool's tip. */
  scoringTip: mm(1),
  /** A sheet that is larger than the blank by less than this cannot be trimmed well. */
  sliver: mm(3),
  /** A free edge stays this far from the next score. */
  edgeToScore: mm(3),
});

/**
 * The least distance of two parallel scores. A crease is 1.5 calipers and the tool's tip wide; common practice, as is one
 * caliper beside each.
 */
export const scoresApart = (caliper: Nm): Nm =>
  Math.max(commonPractice.scoreSpacing, Math.round(3.5 * caliper) + commonPractice.scoringTip);

/** The least depth of a tab or hem that is glued, with a score at one side of it. */
export const gluedDepth = (glueWidth: Nm): Nm => glueWidth + 2 * commonPractice.glueMargin;
