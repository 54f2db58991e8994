import { z } from 'zod';
import { shownLength } from '../lengths/length-reply.ts';

/** The locks of a plan. */
export const locksReply = z.array(
  z
    .strictObject({
      panel: z.string().meta({ description: 'The tab that is held.' }),
      tongue: z.string(),
      to: z.string().meta({ description: 'The panel with the slot.' }),
      neck: shownLength.meta({ description: 'How wide the tongue is where it goes through.' }),
      slot: z
        .strictObject({ left: shownLength, top: shownLength, right: shownLength, bottom: shownLength })
        .meta({ description: 'Distances from the top left corner of the open blank, inside face up.' }),
    })
    .meta({ id: 'Lock', description: 'A tongue that goes through a slot and holds its tab without glue.' }),
);
