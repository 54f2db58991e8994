import { z } from 'zod';
import { withOwnUnits } from '../lengths/length-schema.ts';
import { sheetOf } from '../spec/common.ts';
import { type ownersNotes, withoutNotes } from './owners-notes.ts';

const face = z.string().trim().min(1).max(120);

/** The notes, as they are read. */
const notes = {
  faces: z
    .strictObject({ outside: face.optional(), inside: face.optional() })
    .optional()
    .meta({ description: 'What is printed on its two sides, in words.' }),
  count: z.int().min(0).max(1_000_000).optional().meta({ description: 'Sheets in the cupboard.' }),
  price: z
    .strictObject({
      perSheet: z.number().min(0).max(1_000_000),
      currency: z.string().regex(/^[A-Z]{3}$/u, 'a currency is its ISO 4217 code, such as EUR'),
    })
    .optional()
    .meta({ description: 'What one sheet costs.' }),
  notes: z
    .string()
    .max(2000)
    .optional()
    .meta({ description: 'Where it is kept, who sells it, and the like.' }),
} satisfies Record<(typeof ownersNotes)[number], z.ZodType>;

/** A paper to keep by name: what a spec's `stock` holds, each length with its unit, and its owner's notes. */
export const keptStock = withOwnUnits(sheetOf(notes)).meta({
  id: 'KeptStock',
  title: 'A paper to keep',
});

/** The paper as a spec may hold it. */
export const stockForSpec = (kept: unknown): unknown =>
  typeof kept !== 'object' || kept === null ? kept : withoutNotes({ ...kept });
