import { z } from 'zod';
import { artworkSpec } from '../artwork/artwork-spec.ts';
import { lengthBetween, lengthOrZero, type Settled } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { letteringSpec } from '../lettering/lettering-spec.ts';
import { anchors } from './anchors.ts';
import { inlaySpec } from './inlay-spec.ts';
import { repeatSpec } from './motifs/registry.ts';
import { shapeSpec } from './shapes/registry.ts';

/** More knockouts than this in one spec are a mistake, and each costs time. */
export const MOST_KNOCKOUTS = 40;

const placeName = z
  .string()
  .min(1)
  .max(80)
  .meta({
    description: 'A place by its name, as a plan lists them under `places`.',
    examples: ['front cover'],
  });

const offset = z
  .strictObject({
    left: lengthOrZero.optional(),
    right: lengthOrZero.optional(),
    up: lengthOrZero.optional(),
    down: lengthOrZero.optional(),
  })
  .refine(({ left, right }) => left === undefined || right === undefined, {
    error: 'an offset goes to the left or to the right',
  })
  .refine(({ up, down }) => up === undefined || down === undefined, { error: 'an offset goes up or down' });

const name = z
  .string()
  .min(1)
  .max(60)
  .refine((text) => !/\p{Cc}/u.test(text), { error: 'a name has no control characters' })
  .optional()
  .meta({ description: 'What the maker calls it.' });

const through = z
  .union(
    [
      z.enum(['seen-layer', 'every-layer']),
      z
        .strictObject({
          from: z.string().min(1).max(80).meta({ description: 'A panel, as `proof.stacks` names them.' }),
          to: z.string().min(1).max(80).optional().meta({ description: 'Another; default: only the first.' }),
        })
        .meta({ description: 'All layers between two panels, and both of them.' }),
    ],
    { error: 'cut through "seen-layer", "every-layer" or between two panels: { "from": …, "to": … }' },
  )
  .meta({
    description:
      'Which layers are cut: what is seen (the default), all that lie there, or those between two panels.',
  });

const figureKnockout = z
  .strictObject({
    kind: z.literal('figure'),
    name,
    on: z
      .strictObject({
        place: placeName,
        anchor: z.enum(anchors).optional().meta({
          description:
            'The side, corner or middle of the place to which the same side, corner or middle of the figure goes. Default centre.',
        }),
        offset: offset
          .optional()
          .meta({ description: 'How far it is moved from there, as the reader sees it.' }),
      })
      .meta({ description: 'Where it is cut, as seen on the finished folder that is held upright.' }),
    figure: z
      .union([shapeSpec, letteringSpec, artworkSpec])
      .meta({ description: 'What is cut out: a shape, lettering or artwork.' }),
    turn: z
      .number()
      .min(-360)
      .max(360)
      .optional()
      .meta({ description: 'Degrees clockwise as the reader sees it; default 0.' }),
    repeat: repeatSpec.optional().meta({
      description:
        'Repeats the figure; anchor, offset and turn then are of all of it together. Default: once.',
    }),
    through: through.optional(),
    inlay: inlaySpec.optional(),
  })
  .meta({ title: 'Figure', description: 'A shape, lettering or artwork cut out of a place.' });

const thumbNotch = z
  .strictObject({
    kind: z.literal('thumb-notch'),
    name,
    pocket: z
      .string()
      .min(1)
      .max(80)
      .meta({ description: 'The pocket by its name, as `proof.pockets` lists them.' }),
    radius: lengthBetween(mm(4), mm(40))
      .optional()
      .meta({ description: 'Of the half circle; default 12 mm.' }),
    offset: offset.optional().meta({ description: 'How far from the middle of the mouth it is.' }),
    through: z
      .enum(['front', 'every-layer'])
      .optional()
      .meta({ description: 'Whether only the pocket’s front is cut (the default) or its back too.' }),
  })
  .meta({
    title: 'ThumbNotch',
    description: 'A half circle at a pocket’s mouth, to take hold of what is inside.',
  });

const roundedCorners = z
  .strictObject({
    kind: z.literal('rounded-corners'),
    name,
    place: placeName,
    radius: lengthBetween(mm(1), mm(60)).meta({ description: 'Radius of the corners.' }),
    corners: z
      .array(z.enum(['top left', 'top right', 'bottom left', 'bottom right']))
      .min(1)
      .max(4)
      .optional()
      .meta({ description: 'Which corners of the place; default those that are not at the spine.' }),
  })
  .meta({ title: 'RoundedCorners', description: 'Corners of a place rounded, through every layer.' });

const ribbonSlots = z
  .strictObject({
    kind: z.literal('ribbon-slots'),
    name,
    on: z.strictObject({
      place: placeName,
      anchor: z.enum(anchors).optional(),
      offset: offset.optional(),
    }),
    ribbon: lengthBetween(mm(2), mm(60)).meta({ description: 'Width of the ribbon; slots are 2 mm longer.' }),
    apart: lengthBetween(mm(6), mm(300))
      .optional()
      .meta({ description: 'From one slot to the other; default twice the ribbon’s width, 12 mm at least.' }),
    slot: lengthBetween(mm(0.5), mm(3)).optional().meta({ description: 'Width of a slot; default 1.5 mm.' }),
    turn: z.number().min(-360).max(360).optional().meta({
      description: 'Degrees clockwise; by default the ribbon runs level from slot to slot.',
    }),
    through: through.optional(),
  })
  .meta({ title: 'RibbonSlots', description: 'Two slots through which a ribbon is threaded.' });

/** One thing to cut out, designed on the finished folder. */
export const knockout = z
  .discriminatedUnion('kind', [figureKnockout, thumbNotch, roundedCorners, ribbonSlots])
  .meta({ id: 'Knockout', description: 'Something to cut out, designed on the finished folder.' });

/** A knockout with its lengths settled. */
export type KnockoutSpec = Settled<z.output<typeof knockout>>;
export type KnockoutOf<Kind extends KnockoutSpec['kind']> = Extract<KnockoutSpec, { kind: Kind }>;
