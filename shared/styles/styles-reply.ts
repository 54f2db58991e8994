import { z } from 'zod';
import type { Style } from './style.ts';

/** The reply of `GET /v1/styles`. */
export const stylesReply = z.strictObject({
  styles: z.array(
    z
      .strictObject({
        name: z.string(),
        title: z.string(),
        summary: z.string(),
        pockets: z.int(),
        dimensions: z.array(z.strictObject({ name: z.string(), title: z.string() })).meta({
          description: 'What the solver finds; `name` is the dotted path under `dimensions` in a spec.',
        }),
      })
      .meta({ id: 'Style' }),
  ),
});

/** A style as a reply gives it. */
export const showStyle = <Spec>({ name, title, summary, pockets, dimensionNames }: Style<Spec>) => ({
  name,
  title,
  summary,
  pockets: pockets.length,
  dimensions: [...dimensionNames],
});
