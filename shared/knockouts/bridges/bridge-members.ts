import { z } from 'zod';
import { lengthBetween } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';

/** The members of a spec that keep counters from falling out; the same for letters and for artwork. */
export const bridgeMembers = {
  bridges: z.enum(['automatic', 'none']).optional().meta({
    description:
      'Whether narrow bridges are left so that no counter falls out. Default: automatic. With none, what would fall out is listed.',
  }),
  bridgeWidth: lengthBetween(mm(0.5), mm(20)).optional().meta({
    description:
      'How wide bridges are, from 0.5 mm to 20 mm. Default: the most of 2 mm, 5 % of the height (of capitals, or of the largest piece held) and 3 × the paper’s caliper.',
  }),
};
