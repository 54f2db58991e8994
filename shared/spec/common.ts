import { z } from 'zod';
import { contents, rectangle } from '../contents/contents-schema.ts';
import { convention } from '../drawing/convention.ts';
import { knockout, MOST_KNOCKOUTS } from '../knockouts/knockout-spec.ts';
import { knockoutLimits } from '../knockouts/limits.ts';
import { length, lengthBetween, lengthOrZero, type Measure } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { paperThickness } from '../paper/paper-thickness.ts';
import { sizeById } from '../sizes/catalogue.ts';
import { namedOr } from './stored-name.ts';

const sheetMembers = {
  name: z.string().min(1).max(80).optional().meta({ description: 'What the owner calls this paper.' }),
  ...paperThickness,
  oneWay: z
    .boolean()
    .optional()
    .meta({ description: 'The print has an up, and up runs along the height: the sheet is never turned.' }),
  printPair: z.enum(['same-way', 'head-to-foot']).optional().meta({
    description:
      'How the two printed sides run to each other: both upright when the sheet is turned over left to right, or one on its head.',
  }),
  foldFactor: z.number().min(-0.2).max(1).optional().meta({
    description:
      'How much each fold takes from the panel that ends there, as a share of the caliper; default 0.5. A calibration strip measures it.',
  }),
  turned: z.boolean().optional().meta({
    description: 'Whether the sheet is used turned by a quarter. Default: whichever serves better.',
  }),
};

/** A sheet by a published size or measured, with more members. */
export const sheetOf = <Shape extends z.core.$ZodLooseShape>(more: Shape) =>
  rectangle('sheet', { ...sheetMembers, ...more });

const sheet = sheetOf({}).meta({
  id: 'Sheet',
  description: 'Paper to make folders from, by a published size or measured.',
});

const namedSheet = namedOr(sheet, 'paper', '/v1/stock');

export const cutter = z
  .strictObject({
    width: length,
    height: length,
    margin: lengthOrZero.optional().meta({ description: 'Kept free on every side; default 0.' }),
    kerf: lengthBetween(0, mm(2)).optional().meta({
      description:
        'Width of paper that the tool takes away, as a laser does: outlines are drawn outward and openings inward by half of it. Default 0.',
    }),
    leastCornerRadius: lengthBetween(0, mm(10)).optional().meta({
      description: 'The tool tears sharper corners than this: a plan tells of them. Default: none are told.',
    }),
    roundCorners: z.boolean().optional().meta({
      description: 'Whether knockouts are drawn with corners rounded to `leastCornerRadius`. Default false.',
    }),
  })
  .meta({ id: 'Cutter', description: 'The largest piece that the machine can work on.' });

/** The members that every style's spec has. */
export const commonShape = {
  contents: contents.optional(),
  stock: z
    .union([namedSheet, z.array(namedSheet).min(1).max(24)], {
      error: 'stock is one sheet or a list of 1 to 24 sheets',
    })
    .optional()
    .meta({
      description:
        'The paper to use, or several to choose from. Default: the smallest published sheet that serves.',
    }),
  cutter: namedOr(cutter, 'cutter', '/v1/cutters').optional(),
  grid: z
    .union([z.literal('none'), lengthBetween(mm(0.1), mm(50))])
    .optional()
    .meta({
      description:
        'Scores that the spec does not fix fall on whole steps of this. Default 1/16 in for specs in inches, 1 mm for others.',
    }),
  prefer: z.enum(['whole-sheet', 'least-paper']).optional().meta({
    description: 'What to do with paper to spare: use the whole sheet (the default), or as little as serves.',
  }),
  glue: z
    .strictObject({ width: lengthBetween(mm(1), mm(50)) })
    .optional()
    .meta({ description: 'Width of the tape or line of glue; default 1/4 in.' }),
  ease: z
    .strictObject({
      along: lengthOrZero.optional(),
      across: lengthOrZero.optional(),
      spine: lengthOrZero.optional(),
    })
    .optional()
    .meta({
      description:
        'Play that is left: along the pocket’s closed direction (default 3 mm, and the stack’s thickness is added), across from spine to mouth (6 mm), and on the spine (1 mm).',
    }),
  knockouts: z.array(knockout).max(MOST_KNOCKOUTS).optional().meta({
    description: 'What is cut out of the finished folder. Knockouts that overlap become one opening.',
  }),
  knockoutLimits: knockoutLimits.optional(),
  convention: namedOr(convention, 'convention', '/v1/conventions').optional(),
};

/** The measure of a spec that names sizes and writes no length: inch when all of them are defined in inches. */
export function measureOfSizes(spec: unknown): Measure {
  const measures = sizeNames(spec).map((id) => sizeById(id)?.measure);
  return measures.length > 0 && measures.every((measure) => measure === 'inch') ? 'inch' : 'metric';
}

const sizeNames = (value: unknown): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, item]) =>
        key === 'size' && typeof item === 'string' ? [item] : sizeNames(item),
      );
