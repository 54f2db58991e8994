import { z } from 'zod';
import { served } from './served.ts';

/** URLs to POST to, of what the process serves. */
export const ready = z.partialRecord(z.enum(served), z.url());
export type Ready = z.infer<typeof ready>;

/** `at rest` collects garbage before it answers. */
export type Question = 'now' | 'at rest';

/** What a process says about itself: microseconds and milliseconds since it started, bytes. */
export const reading = z.strictObject({
  cpuMicros: z.number(),
  activeMs: z.number(),
  idleMs: z.number(),
  rss: z.number(),
  /** The highest since the last reading. */
  peakRss: z.number(),
});
export type Reading = z.infer<typeof reading>;
