import { z } from 'zod';
import { convention } from '../drawing/convention.ts';
import { length, lengthBetween, withUnits } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { describeLength } from '../lengths/show-length.ts';
import { namedOr } from '../spec/stored-name.ts';

/** Default number of scores. */
export const usualScores = 10;

/** The edges of a narrower panel cannot be told apart well enough to measure between them; common practice. */
const narrowestPanel = mm(5);

const fewestScores = 2;

/** Thinner is no paper that can be scored, thicker none that folds. */
const caliper = lengthBetween(mm(0.03), mm(2));

/** A strip to cut and fold to and fro, to find out what a fold takes from a panel of one paper. */
export const stripSpec = withUnits({
  length: length.meta({
    description:
      'Length of the strip as cut; each of its panels, one more than there are scores, needs 5 mm.',
  }),
  width: length.optional().meta({ description: 'Default 30 mm.' }),
  scores: z.int().min(fewestScores).max(40).optional().meta({
    description: 'Number of scores, default 10; with 8 or more the loss is large enough to measure.',
  }),
  convention: namedOr(convention, 'convention', '/v1/conventions').optional(),
})
  .superRefine(({ length, scores = usualScores, measure }, context) => {
    const panels = scores + 1;
    if (length >= panels * narrowestPanel) return;
    const most = Math.floor(length / narrowestPanel) - 1;
    const longer = `make the strip at least ${describeLength(panels * narrowestPanel, measure)} long`;
    context.addIssue({
      code: 'custom',
      path: ['length'],
      message: `${scores} scores make ${panels} panels of ${describeLength(Math.floor(length / panels), measure)}: narrower than 5 mm they cannot be measured`,
      params: { remedy: most < fewestScores ? longer : `${longer}, or ask for at most ${most} scores` },
    });
  })
  .meta({ id: 'StripSpec', title: 'Calibration strip' });

export type StripSpec = z.output<typeof stripSpec>;

/** What was measured on a folded strip. */
export const stripMeasurement = withUnits({
  length: length.meta({ description: 'Length of the strip as cut.' }),
  measured: length.meta({
    description: 'Sum of the folded panels, each measured edge to edge after pressing.',
  }),
  caliper: caliper.meta({ description: 'Thickness of one sheet, from 0.03 mm to 2 mm.' }),
  scores: z.int().min(fewestScores).max(40).meta({ description: 'Number of scores on the strip.' }),
}).meta({ id: 'StripMeasurement', title: 'A measured calibration strip' });

/** The fold factor that a strip shows. */
export const foldFactorReply = z
  .strictObject({
    foldFactor: z.number().meta({ description: 'For `stock.foldFactor` in a spec, which takes -0.2 to 1.' }),
    believable: z.boolean().meta({ description: 'False outside -0.2 to 1: then measure again.' }),
  })
  .meta({ id: 'FoldFactor' });
