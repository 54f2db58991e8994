import { z } from 'zod';
import { storedName } from '../../shared/spec/stored-name.ts';
import { mostItemsPerPage } from '../store/store.ts';

const usualItemsPerPage = 50;

/** How many entries of a list to give, as a query has it. */
export const limitParameter = z.coerce
  .number()
  .int()
  .min(1)
  .max(mostItemsPerPage)
  .default(usualItemsPerPage)
  .meta({ description: `The most entries to give, 1 to ${mostItemsPerPage}; default ${usualItemsPerPage}.` });

/** The query of a list in the order of names. */
export const namePage = z.strictObject({
  after: storedName.optional().meta({ description: 'Begins after this name: `next` of the page before.' }),
  limit: limitParameter,
});
