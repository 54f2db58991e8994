import { z } from 'zod';

/** The replies of a maker's sheet, for a route's `response` schema. */
export const guideReply = {
  description: 'The maker’s sheet.',
  content: {
    'text/html': { schema: z.string().meta({ description: 'One page that needs nothing else.' }) },
    'application/pdf': { schema: z.string().meta({ description: 'Tagged, fonts embedded.' }) },
  },
};
