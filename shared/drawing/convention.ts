import { z } from 'zod';
import { lengthBetween, lengthOrZero, type Settled } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';

/** Line types by their ISO 128-2 names. */
export const lineTypes = ['continuous', 'dashed', 'dotted', 'long-dashed dotted'] as const;
export type LineType = (typeof lineTypes)[number];

const colour = z
  .string()
  .regex(/^#[0-9a-fA-F]{6}$/u, 'a colour is # and six hexadecimal digits')
  .meta({ description: 'sRGB colour as # and six hexadecimal digits.', examples: ['#009E73'] });

const lineStyle = {
  colour: colour.optional(),
  width: lengthBetween(mm(0.01), mm(5)).optional().meta({ description: 'Stroke width; default 0.25 mm.' }),
  lineType: z.enum(lineTypes).optional().meta({ description: 'Line type by its ISO 128-2 name.' }),
  order: z.int().min(0).max(99).optional().meta({ description: 'Layers are written in ascending order.' }),
  off: z.boolean().optional().meta({ description: 'Leaves the layer out.' }),
};

/** Finer than a printer’s fine perforation, about 40 teeth to the inch, only makes the drawing large. */
const dash = lengthBetween(mm(0.3), mm(200));

const openLayer = z.strictObject({
  ...lineStyle,
  paint: z
    .literal('stroke', {
      error: 'scores are open lines and can only be stroked: filled, they would become cuts',
    })
    .optional()
    .meta({ description: 'Scores can only be stroked.' }),
});

const closedLayer = z.strictObject({
  ...lineStyle,
  paint: z
    .enum(['stroke', 'fill'])
    .optional()
    .meta({ description: 'Whether shapes are outlined or filled; default stroke.' }),
});

const guideKind = z.strictObject({
  ...lineStyle,
  paint: z
    .literal('stroke', {
      error: 'the guide is never cut and can only be stroked: filled, it would be taken for shapes to cut',
    })
    .optional()
    .meta({ description: 'The guide can only be stroked.' }),
});

const guideLayer = guideKind.extend({
  faces: z.enum(['both', 'up']).optional().meta({
    description:
      'Whether what is on either face of the paper is shown (the default), each face in groups of its own, or only what is on the face that lies up, as a pen needs it.',
  }),
});

/** One user's way of drawing layers. Everything may be left out. */
export const convention = z
  .strictObject({
    layers: z
      .strictObject({
        score: openLayer.optional().meta({ description: 'Both kinds of score.' }),
        scoreValley: openLayer.optional().meta({ description: 'Valley scores; overrides `score`.' }),
        scoreMountain: openLayer.optional().meta({ description: 'Mountain scores; overrides `score`.' }),
        knockout: closedLayer.optional().meta({ description: 'Shapes cut out of the blank.' }),
        cut: closedLayer.optional().meta({ description: 'The outline of the blank.' }),
        guide: guideLayer.optional().meta({
          description:
            'Where the piece is glued, drawn only if this member is there, `{}` at least. Never cut: it is for a pen, or to be looked at and hidden. It holds the outline of each strip, the paper that the strip meets, and the lines that its glue must not pass.',
        }),
        guideGlue: guideKind.optional().meta({
          description:
            'Each strip of tape or glue, width by length. Overrides `guide`; without that it is all that is drawn. Dashed by default where it is on the face that lies down.',
        }),
        guideBare: guideKind.optional().meta({
          description:
            'Where each strip meets the other layer: print and coating are best left out there, as under the strip. Overrides `guide`, or is drawn without it.',
        }),
        guideKeepOut: guideKind.optional().meta({
          description:
            'Around each strip, how near glue may come to edges, scores, mouths and contents. Overrides `guide`, or is drawn without it.',
        }),
      })
      .optional()
      .meta({ description: 'How each kind of line is drawn.' }),
    rootUnit: z
      .enum(['mm', 'in', 'px'])
      .optional()
      .meta({ description: 'Unit of the drawing’s width and height; a px is 1/96 in. Default mm.' }),
    userUnit: z
      .enum(['mm', '1/96 in', '1/72 in'])
      .optional()
      .meta({ description: 'What the number 1 inside the drawing means. Default mm.' }),
    outline: z.enum(['auto', 'always', 'never']).optional().meta({
      description:
        'Whether the blank’s outline is cut. `auto` (the default) leaves it out where the sheet’s own edges serve. Mitred corners are always cut.',
    }),
    score: z
      .strictObject({
        as: z.enum(['crease', 'perforation']).optional().meta({
          description: 'Default crease. A perforation is drawn cut by cut, always with a continuous line.',
        }),
        inset: lengthOrZero.optional().meta({
          description:
            'How far each score stops short of the paper’s edge, but never more than a third of the way to the next score; default 0.',
        }),
        cut: dash.optional().meta({ description: 'Length of a cut in a perforation; default 1.5 mm.' }),
        tie: dash
          .optional()
          .meta({ description: 'Paper left between two cuts of a perforation; default 1.5 mm.' }),
      })
      .optional()
      .meta({ description: 'What scores are made of, and how near they come to the edges.' }),
    sheetLies: z.enum(['inside-up', 'outside-up']).optional().meta({
      description:
        'How the sheet lies under the tool. `inside-up` is the default; `outside-up` mirrors the whole drawing.',
    }),
  })
  .meta({ id: 'Convention', description: 'How the layers are drawn for one machine.' });

/** A convention with its lengths settled. */
export type Convention = Settled<z.output<typeof convention>>;
