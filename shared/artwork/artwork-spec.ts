import { z } from 'zod';
import { bridgeMembers } from '../knockouts/bridges/bridge-members.ts';
import { lengthBetween, type Settled } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';

/** The longest artwork, in characters: 200 KiB of a request's 256 KiB, as most of it is ASCII. */
export const MOST_CHARACTERS = 200 * 1024;

/** The smallest artwork that can be cut and the largest that a sheet for home cutters holds, in nanometres. */
export const SMALLEST = mm(1);
export const LARGEST = mm(600);

const extent = (what: string) =>
  lengthBetween(SMALLEST, LARGEST).meta({
    description: `${what} of all that is cut, 1 mm to 600 mm. Proportions stay; with both, it fits within both.`,
  });

/** The members of a spec for the user's own artwork; lengths in it await the outer object's units. */
export const artworkMembers = {
  artwork: z
    .string({ error: 'artwork is the text of an SVG file, or path data' })
    .min(1, { error: 'the artwork is empty' })
    .max(MOST_CHARACTERS, { error: `artwork has at most ${MOST_CHARACTERS / 1024} KiB` })
    .meta({
      description:
        'An SVG file’s text, of filled shapes and paths only, or the path data of one. At most 200 KiB. Nothing else is read: no style, no text, no picture, no link.',
      examples: ['M0 0 L20 0 L10 15 Z'],
    }),
  width: extent('Width').optional(),
  height: extent('Height').optional(),
  fillRule: z.enum(['nonzero', 'even-odd']).optional().meta({
    description:
      'For path data: which parts are inside where lines cross or lie in each other. An SVG file says it by fill-rule. Default: nonzero.',
  }),
  ...bridgeMembers,
};

/** Artwork to cut out. */
export const artworkSpec = z.strictObject(artworkMembers).meta({ id: 'Artwork' });

/** Artwork as read, with every length in whole nanometres. */
export type ArtworkSpec = Settled<z.output<typeof artworkSpec>>;
