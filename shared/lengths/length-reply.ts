import { z } from 'zod';

/** A length in a reply. */
export const shownLength = z
  .strictObject({
    mm: z.number().meta({ description: 'Millimetres, exact.' }),
    inch: z.string().meta({ description: 'Inches as a fraction to 1/64; "≈" marks a rounded one.' }),
  })
  .meta({ id: 'Length', examples: [{ mm: 44.45, inch: '1 3/4' }] });

/** A rectangle in a reply. */
export const shownExtent = z.strictObject({ width: shownLength, height: shownLength }).meta({ id: 'Extent' });
