import { z } from 'zod';

/** How the maker's sheet is wanted; every member has a usual value. */
export const guideQuery = z.strictObject({
  format: z.enum(['html', 'pdf']).default('html').meta({
    description: 'A page for a browser, or a document to print.',
  }),
  print: z.enum(['standard', 'large']).default('standard').meta({
    description: '`large` has text of at least 16 points.',
  }),
  machine: z.enum(['yes', 'no']).default('yes').meta({
    description: 'Whether a machine scores and cuts; with `no` everything is told for hand tools.',
  }),
  shows: z.enum(['outside', 'inside']).default('outside').meta({
    description: 'Which face of the paper becomes the outside of the folder.',
  }),
  paper: z.enum(['a4', 'letter']).default('a4').meta({ description: 'What a PDF is printed on.' }),
  template: z.enum(['yes', 'no']).default('no').meta({
    description:
      'Adds the blank in real size to a PDF, over as many pages as it takes, with marks to join them and a rule to check the printer by.',
  }),
});

export type GuideWish = z.output<typeof guideQuery>;
