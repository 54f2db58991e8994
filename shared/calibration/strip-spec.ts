import { z } from 'zod';
import { convention } from '../drawing/convention.ts';
import { length, withUnits } from '../lengths/length-schema.ts';

/** A strip to cut and fold to and fro, to find out what a fold takes from a panel of one paper. */
export const stripSpec = withUnits({
  length: length.meta({ description: 'Length of the strip as cut.' }),
  width: length.optional().meta({ description: 'Default 30 mm.' }),
  scores: z.int().min(2).max(40).optional().meta({
    description: 'Number of scores, default 10; with 8 or more the loss is large enough to measure.',
  }),
  convention: convention.optional(),
}).meta({ id: 'StripSpec', title: 'Calibration strip' });

export type StripSpec = z.output<typeof stripSpec>;

/** What was measured on a folded strip. */
export const stripMeasurement = withUnits({
  length: length.meta({ description: 'Length of the strip as cut.' }),
  measured: length.meta({
    description: 'Sum of the folded panels, each measured edge to edge after pressing.',
  }),
  caliper: length.meta({ description: 'Thickness of one sheet.' }),
  scores: z.int().min(2).max(40).meta({ description: 'Number of scores on the strip.' }),
}).meta({ id: 'StripMeasurement', title: 'A measured calibration strip' });

/** The fold factor that a strip shows. */
export const foldFactorReply = z
  .strictObject({
    foldFactor: z.number().meta({ description: 'For `stock.foldFactor` in a spec, which takes -0.2 to 1.' }),
    believable: z.boolean().meta({ description: 'False outside -0.2 to 1: then measure again.' }),
  })
  .meta({ id: 'FoldFactor' });
