import { z } from 'zod';

/** How far the sheets of one paper are; the search ends at the latest when `sheets` is the `bound`. */
export const setProgress = z
  .strictObject({
    paper: z.string(),
    sheets: z.int().meta({ description: 'Of the best way so far.' }),
    bound: z.int().meta({ description: 'No way is known to take fewer.' }),
    evaluations: z.int().meta({ description: 'About so many sheets were filled in trial.' }),
  })
  .meta({ id: 'SetProgress' });

export type SetProgress = z.output<typeof setProgress>;
