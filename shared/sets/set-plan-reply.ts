import { z } from 'zod';
import { shownExtent, shownLength } from '../lengths/length-reply.ts';

const money = z.strictObject({ amount: z.number(), currency: z.string() }).meta({ id: 'Money' });
const faceUp = z
  .enum(['outside', 'inside'])
  .meta({ description: 'The printed side of the paper that lies up.' });

const piece = z
  .strictObject({
    name: z.string(),
    title: z.string(),
    paper: z.string(),
    blank: shownExtent,
    closed: z.strictObject({ width: shownLength, height: shownLength, thickness: shownLength }).optional(),
    perKit: z.int(),
    quantity: z.int().meta({ description: 'For all kits, with spoilage.' }),
    turns: z.enum(['none', 'half', 'quarter']),
    faceUp: faceUp.optional(),
    warnings: z.array(
      z.strictObject({
        code: z.string(),
        path: z.string().meta({ description: 'JSON Pointer into the set.' }),
        message: z.string(),
        remedy: z.string().optional(),
      }),
    ),
  })
  .meta({ id: 'PlannedPiece' });

const layout = z
  .strictObject({
    number: z.int(),
    file: z.string().meta({ description: 'Its drawing in the archive of POST /v1/sets/sheets.' }),
    times: z.int().meta({ description: 'Sheets that are cut like this.' }),
    sheet: shownExtent.meta({ description: 'As it lies under the tool; cut down first where it is larger.' }),
    turned: z.boolean().meta({
      description: 'Whether the sheet lies a quarter turn clockwise under the tool: its height lies across.',
    }),
    faceUp: faceUp.optional(),
    sharedCuts: z.int().meta({ description: 'Lines that two pieces share, cut once.' }),
    placed: z
      .array(
        z.strictObject({
          piece: z.string(),
          x: shownLength,
          y: shownLength,
          width: shownLength,
          height: shownLength,
          turn: z.int().meta({ description: 'Degrees clockwise as seen.' }),
        }),
      )
      .meta({
        description:
          'The box around each piece. Boxes of pieces that are no rectangles may overlap; their outlines do not.',
      }),
  })
  .meta({ id: 'SheetLayout', description: 'Places are measured from the sheet’s top left corner.' });

const plannedPaper = z
  .strictObject({
    paper: z.string(),
    sheet: shownExtent,
    sheets: z.int(),
    bound: z.int().meta({ description: 'No way of placing the same pieces takes fewer sheets.' }),
    gap: z.int(),
    proved: z.boolean().meta({ description: 'Whether the number of sheets is proved to be the least.' }),
    stopped: z
      .enum(['proved', 'evaluations', 'time limit', 'cancelled'])
      .meta({ description: 'Why the search ended.' }),
    utilisation: z.number().meta({ description: 'The share of the paper that becomes pieces.' }),
    layouts: z.array(layout),
    offcuts: z
      .array(z.strictObject({ width: shownLength, height: shownLength, count: z.int() }))
      .meta({ description: 'Rectangles that are left over within the machine’s reach, the largest first.' }),
  })
  .meta({ id: 'PlannedPaper' });

const shoppingItem = z
  .strictObject({
    item: z.string(),
    kind: z.enum(['paper', 'ribbon', 'tape']),
    needed: z.number(),
    unit: z.enum(['sheets', 'm']),
    have: z.number().optional().meta({ description: 'In the cupboard.' }),
    short: z.number(),
    packs: z.int().optional().meta({ description: 'Packs, spools or rolls to buy.' }),
    packOf: z.number().optional(),
    cost: money.optional(),
  })
  .meta({ id: 'ShoppingItem' });

const postHint = z
  .strictObject({
    post: z.string(),
    size: z.string(),
    notes: z.array(z.string()),
    source: z.string(),
    dated: z
      .string()
      .optional()
      .meta({ description: 'Date of the published limits, where the source tells one.' }),
  })
  .meta({
    id: 'PostHint',
    description: 'A hint from published limits, which change; only the post decides.',
  });

/** The reply of `POST /v1/sets/plan`. */
export const setPlanReply = z
  .strictObject({
    kits: z.int(),
    spoilage: z.number(),
    pieces: z.array(piece),
    papers: z.array(plannedPaper),
    sheets: z.int(),
    differentSheets: z.int(),
    ribbon: z
      .strictObject({ each: shownLength, count: z.int(), metres: z.number() })
      .optional()
      .meta({ description: 'Each length is rounded up to 1/4 in or 5 mm.' }),
    tape: z
      .strictObject({ metres: z.number() })
      .optional()
      .meta({ description: 'Tape or glue line for all pieces, with a tenth for ends.' }),
    shopping: z.array(shoppingItem),
    perKit: z
      .strictObject({
        cost: z
          .array(money)
          .meta({ description: 'By currency: sheets that are cut, and shares of spools and rolls.' }),
        unpriced: z.array(z.string()).meta({ description: 'What is used and has no price.' }),
        minutes: z.number().optional(),
        grammes: z.number().optional(),
        unweighed: z
          .array(z.string())
          .meta({ description: 'Pieces whose paper has no known weight; contents are never weighed.' }),
      })
      .meta({ id: 'PerKit' }),
    minutes: z.number().optional().meta({ description: 'For everything that is made, with spoilage.' }),
    post: z.array(postHint).optional(),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'SetPlan' });

export type SetPlanReply = z.output<typeof setPlanReply>;
