import { z } from 'zod';

/** A time in a reply. */
export const moment = (description: string) =>
  z.string().meta({ description, format: 'date-time', examples: ['2026-11-25T18:30:00.000Z'] });
