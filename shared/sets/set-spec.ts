import { z } from 'zod';
import { rectangle } from '../contents/contents-schema.ts';
import { convention } from '../drawing/convention.ts';
import { keptStock } from '../kept/kept-stock.ts';
import { length, lengthBetween, lengthOrZero, withUnits } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { ties } from '../ribbon/ribbon.ts';
import { cutter, measureOfSizes } from '../spec/common.ts';
import { folderSpec } from '../spec/folder-spec.ts';
import { namedOr } from '../spec/stored-name.ts';
import { withSpoilage } from './quantities.ts';

/** Bounds of one set: what a nesting can be asked for at a time. */
export const MOST_PIECES = 10_000;
export const MOST_KINDS = 60;
export const MOST_PAPERS = 24;
export const MOST_SECONDS = 60;

const name = z.string().trim().min(1).max(60);
const money = z.number().min(0).max(1_000_000);

/** A paper as its owner keeps it; how pieces lie on it is what the nesting decides. */
const { size: _size, width: _width, height: _height, turned: _turned, ...membersOfKept } = keptStock.in.shape;

const paper = rectangle('sheet', {
  ...membersOfKept,
  packOf: z.int().min(1).max(10_000).optional().meta({ description: 'Sheets in a pack; default 1.' }),
}).meta({
  id: 'SetPaper',
  description: 'A paper that pieces are cut from, with what its owner notes of it.',
});

const pieceReference = name.meta({ description: 'Name of a piece of this set.' });

const make = {
  make: folderSpec.meta({
    description:
      'A folder of any style, as POST /v1/folders/plan reads it, with lengths in its own `units`. Its paper, cutter and convention are the set’s; default of `prefer` is `least-paper`.',
  }),
};
const cut = {
  cut: z.strictObject({ width: length, height: length }).meta({
    description: 'A plain rectangle, such as a mat or a topper. A one-way print runs up along its height.',
  }),
};
const inlay = {
  inlay: z
    .strictObject({
      of: pieceReference,
      name: z
        .string()
        .regex(/^(?:inlay|frame)-\d{1,3}$/u, 'an inlay is called inlay-1, a frame frame-1')
        .meta({ description: 'As the plan of that piece lists it.', examples: ['inlay-1'] }),
    })
    .meta({ description: 'What a knockout of another piece asks for, to be cut from this paper.' }),
};

const common = {
  name,
  perKit: z.int().min(1).max(1000).default(1),
  paper: z
    .union([
      z
        .int()
        .min(0)
        .max(MOST_PAPERS - 1),
      z.string().min(1).max(80),
    ])
    .default(0)
    .meta({
      description: 'Which paper: its place in `papers`, counted from 0, or its name. Default: the first.',
    }),
  turns: z.enum(['none', 'half', 'quarter']).optional().meta({
    description:
      'How it may be turned on the sheet. Default: not at all on a one-way paper, else by quarters; `half` where the grain must run along its height.',
  }),
  minutes: z.number().min(0).max(10_000).optional().meta({
    description: 'Your own time for one piece, in minutes: cutting, scoring, folding, gluing.',
  }),
};

const shows = z.enum(['outside', 'inside']).optional().meta({
  description:
    'Which printed side of the paper is the outside of the folder, or is seen of the inlay. Default: the outside.',
});

const piece = z
  .union([
    z.strictObject({
      ...common,
      ...make,
      shows,
    }),
    z.strictObject({ ...common, ...cut }),
    z.strictObject({ ...common, ...inlay, shows }),
  ])
  .meta({
    id: 'SetPiece',
    description: 'A piece of every kit: a folder to `make`, a rectangle to `cut`, or an `inlay`.',
  });

const price = z.strictObject({
  perPack: money,
  currency: z.string().regex(/^[A-Z]{3}$/u, 'a currency is its ISO 4217 code, such as EUR'),
});

const ribbon = z
  .strictObject({
    around: pieceReference.meta({ description: 'The folder that it is tied around.' }),
    tie: z.enum(ties).default('around the width'),
    loop: lengthBetween(mm(5), mm(500))
      .optional()
      .meta({ description: 'Reach of a loop of the bow; default 40 mm.' }),
    tail: lengthBetween(0, mm(1000)).optional().meta({ description: 'Length of a tail; default 60 mm.' }),
    width: lengthBetween(mm(1), mm(100))
      .optional()
      .meta({ description: 'Width of the ribbon; default 6 mm.' }),
    metres: z.number().min(0.1).max(1000).optional().meta({ description: 'Ribbon on a spool, in metres.' }),
    price: price.optional().meta({ description: 'What a spool costs.' }),
  })
  .meta({ id: 'SetRibbon' });

const tape = z
  .strictObject({
    metres: z.number().min(0.1).max(1000).optional().meta({ description: 'Tape on a roll, in metres.' }),
    price: price.optional().meta({ description: 'What a roll costs.' }),
  })
  .meta({ id: 'SetTape' });

const written = withUnits(
  {
    title: z
      .string()
      .trim()
      .min(1)
      .max(60)
      .optional()
      .meta({
        description: 'What the class or the stall is called, for its labels.',
        examples: ['Lamp room evening'],
      }),
    kits: z.int().min(1).max(MOST_PIECES),
    spoilage: z.number().min(0).max(0.5).default(0.05).meta({
      description:
        'The share of all that is made that will be spoilt: n kits take n / (1 − share) of everything, rounded up.',
    }),
    pieces: z.array(piece).min(1).max(MOST_KINDS),
    papers: z
      .array(namedOr(paper, 'paper', '/v1/stock'))
      .min(1)
      .max(MOST_PAPERS)
      .meta({ description: 'Papers to cut from; names of papers that you keep will do.' }),
    cutter: namedOr(cutter, 'cutter', '/v1/cutters').optional(),
    convention: namedOr(convention, 'convention', '/v1/conventions').optional(),
    gap: lengthOrZero.optional().meta({
      description: 'Kept free between pieces; default 0, so that neighbours share a cut.',
    }),
    ribbon: ribbon.optional(),
    tape: tape.optional(),
    post: z.strictObject({ piece: pieceReference }).optional().meta({
      description: 'The piece in which a kit is sent by post, closed as it is.',
    }),
    seed: z
      .int()
      .min(0)
      .max(2 ** 32 - 1)
      .default(1)
      .meta({
        description: 'Same set and same seed, same sheets.',
      }),
    timeLimit: z.number().min(0.1).max(MOST_SECONDS).default(30).meta({
      description:
        'After so many seconds of search the best sheets so far are the answer; most sets take far less. A plan says when that happened, since another run may then differ.',
    }),
  },
  measureOfSizes,
);

type Written = z.output<typeof written>;

/** What a set is made of and how many kits are wanted. Reading it settles every length to whole nanometres. */
export const setSpec = written
  .superRefine((spec, context) => {
    const fail = (path: (string | number)[], message: string, remedy: string) =>
      context.addIssue({ code: 'custom', path, message, params: { remedy } });
    checkNames(spec, fail);
    for (const [index, each] of spec.pieces.entries()) checkPiece(spec, each, index, fail);
    const all = spec.pieces.reduce(
      (sum, { perKit }) => sum + withSpoilage(spec.kits * perKit, spec.spoilage),
      0,
    );
    if (all > MOST_PIECES)
      fail(['kits'], `these are ${all} pieces in all`, `plan at most ${MOST_PIECES} pieces at a time`);
    if (spec.cutter && 2 * (spec.cutter.margin ?? 0) >= Math.min(spec.cutter.width, spec.cutter.height))
      fail(
        ['cutter', 'margin'],
        'the margins leave nothing of the cutter’s area',
        'give a margin of less than half the shorter side',
      );
    for (const [member, reference] of [
      ['ribbon', spec.ribbon?.around],
      ['post', spec.post?.piece],
    ] as const) {
      if (reference === undefined || spec.pieces.some((each) => each.name === reference && 'make' in each))
        continue;
      fail(
        [member, member === 'ribbon' ? 'around' : 'piece'],
        `no piece to make is called ${JSON.stringify(reference)}`,
        'give the name of a piece with `make`',
      );
    }
  })
  .meta({ id: 'SetSpec', title: 'A set of folders and what goes with them, for a number of kits' });

type Fail = (path: (string | number)[], message: string, remedy: string) => void;

function checkNames({ pieces, papers }: Written, fail: Fail): void {
  for (const [index, each] of pieces.entries())
    if (pieces.findIndex((other) => other.name === each.name) < index)
      fail(
        ['pieces', index, 'name'],
        `two pieces are called ${JSON.stringify(each.name)}`,
        'give each piece its own name',
      );
  for (const [index, each] of papers.entries())
    if (each.name !== undefined && papers.findIndex((other) => other.name === each.name) < index)
      fail(
        ['papers', index, 'name'],
        `two papers are called ${JSON.stringify(each.name)}`,
        'give each paper its own name',
      );
}

function checkPiece(spec: Written, piece: Written['pieces'][number], index: number, fail: Fail): void {
  if (paperOf(spec, piece.paper) === undefined)
    fail(
      ['pieces', index, 'paper'],
      `there is no paper ${JSON.stringify(piece.paper)}`,
      'give the name of one of `papers`, or its place counted from 0',
    );
  if ('make' in piece)
    for (const member of ['stock', 'cutter', 'convention'] as const)
      if (piece.make[member] !== undefined)
        fail(
          ['pieces', index, 'make', member],
          `the set has its own ${member === 'stock' ? 'papers' : member}`,
          'leave it out here',
        );
  if ('inlay' in piece && !spec.pieces.some((each) => each.name === piece.inlay.of && 'make' in each))
    fail(
      ['pieces', index, 'inlay', 'of'],
      `no piece to make is called ${JSON.stringify(piece.inlay.of)}`,
      'give the name of a piece with `make`',
    );
}

/** The place in `papers` of what a piece names; undefined where there is none. */
export function paperOf({ papers }: Pick<Written, 'papers'>, reference: number | string): number | undefined {
  const index =
    typeof reference === 'number' ? reference : papers.findIndex((each) => each.name === reference);
  return papers[index] === undefined ? undefined : index;
}

export type SetSpec = z.output<typeof setSpec>;
export type SetPiece = SetSpec['pieces'][number];
export type SetPaper = SetSpec['papers'][number];
