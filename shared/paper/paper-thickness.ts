import { z } from 'zod';
import { lengthBetween, type Settled } from '../lengths/length-schema.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';
import { basisWeight, grammageOf } from './basis-weight.ts';
import { caliperFromBulk } from './caliper.ts';
import { type PaperSort, usualSortOfGrade, usualSortOfGrammage } from './usual-bulk.ts';

/** Thinner is no paper, thicker no paper that folds; a caliper of 12 is points taken for millimetres. */
export const oneSheet = lengthBetween(mm(0.03), mm(2));

/**
 * The ways to say how thick a paper is, as members to spread into a strict object. What comes first counts:
 * a measured caliper, then the grammage, then the basis weight. Bounds are wider than any paper that folds.
 */
export const paperThickness = {
  caliper: oneSheet.optional().meta({
    description:
      'Thickness of one sheet, 0.03 mm to 2 mm. Best measured: ten sheets together, divided by ten. 12 pt is 0.012 in.',
  }),
  grammage: z
    .number()
    .min(5)
    .max(2000)
    .optional()
    .meta({ description: 'Mass in g/m². Gives the thickness where no caliper is given.', examples: [216] }),
  basisWeight: basisWeight.optional(),
  bulk: z
    .number()
    .min(0.3)
    .max(5)
    .optional()
    .meta({
      description:
        'Specific volume in cm³/g, used with grammage or basisWeight; usual for the paper if left out.',
      examples: [1.3],
    }),
};

/** What is known of a paper once its lengths are settled. */
export type PaperThickness = Settled<z.output<z.ZodObject<typeof paperThickness>>>;

/** A caliper, what it was taken from, and why in words. */
export interface KnownCaliper {
  readonly caliper: Nm;
  readonly from: 'measured' | 'grammage' | 'basis weight' | 'default';
  readonly why: string;
}

/** Middle of the 0.2 to 0.4 mm that folds well as a folder; common practice. */
export const DEFAULT_CALIPER: Nm = mm(0.3);

const round = (value: number): number => Number(value.toFixed(2));

const bulkOf = (bulk: number | undefined, usual: PaperSort): { bulk: number; words: string } =>
  bulk === undefined
    ? { bulk: usual.bulk, words: `${round(usual.bulk)} cm³/g, usual for ${usual.name} (${usual.source})` }
    : { bulk, words: `${round(bulk)} cm³/g` };

/**
 * The caliper of a paper from the best that is known of it: measured, from grammage and bulk, from basis
 * weight and bulk, or the default. A bulk without either weight says nothing and is left aside.
 */
export function caliperOf(paper: PaperThickness): KnownCaliper {
  if (paper.caliper !== undefined)
    return { caliper: paper.caliper, from: 'measured', why: 'the caliper is given' };
  if (paper.grammage !== undefined) {
    const { bulk, words } = bulkOf(paper.bulk, usualSortOfGrammage(paper.grammage));
    return {
      caliper: caliperFromBulk(paper.grammage, bulk),
      from: 'grammage',
      why: `${round(paper.grammage)} g/m² with a bulk of ${words}`,
    };
  }
  if (paper.basisWeight !== undefined) {
    const { pounds, grade } = paper.basisWeight;
    const grammage = grammageOf(paper.basisWeight);
    const { bulk, words } = bulkOf(paper.bulk, usualSortOfGrade(grade));
    return {
      caliper: caliperFromBulk(grammage, bulk),
      from: 'basis weight',
      why: `${round(pounds)} lb ${grade} is ${round(grammage)} g/m², with a bulk of ${words}`,
    };
  }
  return {
    caliper: DEFAULT_CALIPER,
    from: 'default',
    why: 'nothing says how thick the paper is: 0.3 mm is common practice; measure ten sheets together and divide by ten',
  };
}
