import { z } from 'zod';
import { LONGEST, mm } from '../lengths/nanometres.ts';

const side = z.int().min(1).max(LONGEST);
const face = z.enum(['A', 'B']);

interface Box {
  readonly width: number;
  readonly height: number;
  readonly outline?: readonly { readonly x: number; readonly y: number }[] | undefined;
}

function fillsItsBox({ width, height, outline }: Box): boolean {
  if (outline === undefined) return true;
  const [across, along] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  return (
    Math.min(...across) === 0 &&
    Math.min(...along) === 0 &&
    Math.max(...across) === width &&
    Math.max(...along) === height
  );
}

/** Everything below is in whole nanometres, x right, y down, from the top left corner. */
const piece = z
  .strictObject({
    name: z.string().min(1).max(80),
    width: side,
    height: side,
    count: z.int().min(1).max(10_000),
    turns: z.enum(['none', 'half', 'quarter']).default('quarter').meta({
      description:
        'How it may be turned on the sheet: not at all where a print has an up, by halves where only the grain counts, by quarters otherwise.',
    }),
    paper: z.string().min(1).max(80).meta({ description: 'Lies only on sheets of this paper.' }),
    face: face.optional().meta({
      description: 'The face of the sheet that must lie up while it is cut. Default: either.',
    }),
    outline: z
      .array(z.strictObject({ x: z.int().min(0), y: z.int().min(0) }))
      .min(3)
      .max(1000)
      .optional()
      .meta({
        description:
          'Corners of a closed outline that does not cross itself and that touches all four sides of width × height. Default: the rectangle.',
      }),
  })
  .refine(fillsItsBox, {
    path: ['outline'],
    error: 'the outline must touch all four sides of width by height, and lie within',
  });

const sheet = z.strictObject({
  paper: z.string().min(1).max(80),
  width: side,
  height: side,
  count: z
    .int()
    .min(0)
    .max(100_000)
    .optional()
    .meta({ description: 'How many there are. Default: any number.' }),
  margin: z.int().min(0).max(LONGEST).default(0).meta({ description: 'Kept free along every side.' }),
});

export const nestSpec = z
  .strictObject({
    pieces: z.array(piece).min(1).max(10_000),
    sheets: z.array(sheet).min(1).max(48),
    gap: z.int().min(0).max(mm(100)).default(0).meta({
      description: 'Kept free between pieces. With 0, neighbours share a cut.',
    }),
    outlineGap: z.int().min(0).max(mm(100)).default(0).meta({
      description:
        'Kept free between pieces instead of a smaller gap, on sheets where outlines lie within one another’s boxes.',
    }),
    seed: z
      .int()
      .min(0)
      .max(2 ** 32 - 1)
      .default(1),
    evaluations: z.int().min(1).max(1_000_000).default(4000).meta({
      description:
        'Bound of the search: about so many sheets are filled in trial. Same bound and seed, same answer.',
    }),
    leastOffcut: side.default(mm(25)).meta({ description: 'Offcuts with a shorter side are not listed.' }),
  })
  .meta({ id: 'NestSpec' });

/** As a caller writes it, with defaults left out. */
export type NestInput = z.input<typeof nestSpec>;
export type NestSpec = z.output<typeof nestSpec>;
export type NestPiece = NestSpec['pieces'][number];
export type NestSheet = NestSpec['sheets'][number];
export type Face = z.output<typeof face>;
