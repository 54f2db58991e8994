import { z } from 'zod';
import { bridgeMembers } from '../knockouts/bridges/bridge-members.ts';
import { length, lengthBetween, lengthOrZero, type Settled } from '../lengths/length-schema.ts';
import { mm } from '../lengths/nanometres.ts';
import { fontChoice } from './font-choice.ts';

/** How many characters one line of lettering may have; longer texts are set as several. */
export const MOST_CHARACTERS = 60;

/** The members of a spec for letters; lengths in it await the outer object's units. */
export const letteringMembers = {
  lettering: z
    .string({ error: 'lettering is a line of text' })
    .min(1, { error: 'there is no text' })
    .refine((text) => [...text].length <= MOST_CHARACTERS, {
      error: `a line of lettering has at most ${MOST_CHARACTERS} characters`,
    })
    .refine((text) => !/[\p{Cc}\p{Zl}\p{Zp}]/u.test(text), {
      error: 'lettering is one line, without tabs, line breaks or control characters',
    })
    .refine((text) => text.trim() !== '', { error: 'the text has nothing but spaces' })
    .meta({
      description: `One line of text, at most ${MOST_CHARACTERS} characters.`,
      examples: ['Harbour Light'],
    }),
  font: fontChoice.optional(),
  height: lengthBetween(mm(2), mm(400)).meta({
    description: 'How tall capital letters are, from 2 mm to 400 mm. Below 12 mm they seldom cut well.',
  }),
  spacing: lengthOrZero.optional().meta({ description: 'Space added after each letter. Default: none.' }),
  curve: z
    .strictObject({
      radius: length.meta({ description: 'Radius of the circle that the baseline follows.' }),
      bulge: z.enum(['up', 'down']).meta({
        description: 'Up: the line stands on top of a circle. Down: it lies in the bottom of one.',
      }),
    })
    .optional()
    .meta({ description: 'Bends the baseline; each letter is turned as a whole. Default: straight.' }),
  ...bridgeMembers,
};

/** A line of text to cut out. */
export const letteringSpec = z.strictObject(letteringMembers).meta({ id: 'Lettering' });

/** Lettering as read, with every length in whole nanometres. */
export type LetteringSpec = Settled<z.output<typeof letteringSpec>>;
