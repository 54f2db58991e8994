import { z } from 'zod';
import { moment } from '../replies/moment.ts';
import { next } from '../replies/next-page.ts';
import type { Stored } from '../store/store.ts';

/** An entry of a list of kept things. */
export const keptEntry = z
  .strictObject({
    name: z.string(),
    version: z.int().min(1).meta({ description: 'Grows with every change; as `"3"` it is the entity tag.' }),
    created: moment('When it was first kept.'),
    changed: moment('When this version was kept.'),
    value: z.unknown().meta({ description: 'What is kept, as it was put.' }),
  })
  .meta({ id: 'KeptEntry' });

/** A page of kept things. */
export const keptList = z
  .strictObject({
    items: z.array(keptEntry),
    next,
  })
  .meta({ id: 'KeptList' });

/** A kept thing as an entry of a list. */
export const showEntry = ({ name, version, created, changed, body }: Stored): z.output<typeof keptEntry> => ({
  name,
  version,
  created,
  changed,
  value: body,
});
