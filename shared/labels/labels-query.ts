import type { z } from 'zod';
import { guideQuery } from '../guide/guide-query.ts';

/** How labels are printed; every member has a usual value. */
export const labelsQuery = guideQuery.pick({ print: true, paper: true });

export type LabelsWish = z.output<typeof labelsQuery>;
