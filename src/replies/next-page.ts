import { z } from 'zod';

/** Where the following page of a list begins, in a reply. */
export const next = z
  .string()
  .optional()
  .meta({ description: 'Send it as `after` for the following page; absent on the last one.' });
