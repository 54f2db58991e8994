import { z } from 'zod';
import { moment } from '../replies/moment.ts';
import { isStorable } from '../store/stored-time.ts';

const expires = z.iso
  .datetime({ offset: true, error: 'a time is written as in 2027-03-31T18:00:00Z' })
  .refine((text) => isStorable(new Date(text)), 'the year has more than four digits')
  .meta({ description: 'From this moment on the link gives nothing.', format: 'date-time' });

/** What a new link to a design is asked for with. */
export const shareRequest = z
  .strictObject({ expires: expires.optional() })
  .meta({ id: 'ShareRequest', title: 'A link to a design' });

const known = {
  id: z.string().meta({ description: 'Revokes the link.' }),
  created: moment('When the link was made.'),
  expires: moment('From this moment on it gives nothing; absent if that never comes.').optional(),
};

/** A link as its owner sees it later: its secret is not kept. */
export const shareEntry = z.strictObject(known).meta({ id: 'Share' });

export const shareList = z.strictObject({ items: z.array(shareEntry) });

/** A new link, the only time that its secret is shown. */
export const newShare = z
  .strictObject({
    ...known,
    secret: z.string().meta({ description: 'Shown this once. Whoever has it can read the design.' }),
    href: z
      .string()
      .meta({ description: 'Where the design is read, without a sign-in.', format: 'uri-reference' }),
  })
  .meta({ id: 'NewShare' });
