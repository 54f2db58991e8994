import { z } from 'zod';
import { svgMediaType } from './media-type.ts';

/** The reply of a route that answers with an SVG, for its `response` schema. */
export const svgReply = (description: string) => ({
  description,
  content: { [svgMediaType]: { schema: z.string() } },
});
