import { z } from 'zod';
import { lengthBetween } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { oneSheet } from '../paper/paper-thickness.ts';
import { sizeId } from '../sizes/size-schema.ts';

/** More sets than this no folder holds; it bounds the search. */
export const MOST_PER_POCKET = 200;

/** Smaller is no card, larger no sheet of paper off a roll. */
const side = lengthBetween(mm(10), mm(2000));

const measured = { width: side, height: side };

const notBoth = 'give either a size by name or a width and a height';

/** A rectangle by a published size's name, or measured. */
export function rectangle<Kind extends 'card' | 'envelope' | 'sheet', Shape extends z.core.$ZodLooseShape>(
  kind: Kind,
  more: Shape,
) {
  return z
    .strictObject({
      size: sizeId(kind).optional().meta({ description: `A published size, as GET /v1/sizes lists it.` }),
      width: measured.width.optional(),
      height: measured.height.optional(),
      ...more,
    })
    .superRefine((value: { size?: unknown; width?: unknown; height?: unknown }, context) => {
      const sides = [value.width, value.height].filter((side) => side !== undefined).length;
      const one = value.size === undefined ? sides === 2 : sides === 0;
      if (!one) {
        context.addIssue({
          code: 'custom',
          message: value.size === undefined ? 'the size is missing' : 'the size is given twice',
          params: { remedy: notBoth },
        });
      }
    });
}

const item = rectangle('card', {
  form: z.enum(['folded', 'flat']).optional().meta({
    description:
      'A folded card has two layers, a flat one has one. Default: flat for index cards, else folded.',
  }),
  caliper: oneSheet.optional().meta({ description: 'Thickness of one layer of the card; default 0.33 mm.' }),
  mats: z
    .array(oneSheet)
    .max(8)
    .optional()
    .meta({ description: 'Thickness of each sheet that is glued on.' }),
  raised: lengthBetween(0, mm(30))
    .optional()
    .meta({ description: 'Height by which decoration stands up from the card, before it is pressed.' }),
});

const envelope = rectangle('envelope', {
  caliper: oneSheet.optional().meta({ description: 'Thickness of the envelope paper; default 0.12 mm.' }),
  lining: oneSheet.optional().meta({ description: 'Thickness of a lining sheet, if there is one.' }),
});

/** What goes into the pockets. */
export const contents = z
  .strictObject({
    item: item.meta({ description: 'The card, by a published size or measured, closed if it folds.' }),
    envelope: envelope
      .optional()
      .meta({ description: 'The envelope that goes with each card, if one does.' }),
    perPocket: z.int().min(1).max(200).optional().meta({
      description:
        'Sets in each pocket, a set being the item with its envelope. Default: what the given spine holds, or one.',
    }),
    thickness: lengthBetween(mm(0.1), mm(60)).optional().meta({
      description: 'Thickness of one set, measured in the stack; it replaces the estimate from the papers.',
    }),
    packing: z
      .enum(['pressed', 'loose'])
      .optional()
      .meta({ description: 'How the stack lies: pressed by hand (the default), or loose with air in it.' }),
    turned: z.boolean().optional().meta({
      description:
        'Whether the item stands turned by a quarter in the pocket. Default: whichever serves better.',
    }),
  })
  .meta({ id: 'Contents', description: 'What goes into each pocket.' });
