import { z } from 'zod';

/** The longest name under which something can be kept, in UTF-16 code units. */
const longest = 80;

/**
 * A name under which a user keeps something: letters of any script, digits, spaces and a little punctuation.
 * It begins with a letter or a digit, so that no name is a path of its own in a URL.
 */
export const storedName = z
  .string()
  .normalize('NFC')
  .regex(
    new RegExp(
      `^[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} ._'’&+,()×-]{0,${longest - 2}}[\\p{L}\\p{M}\\p{N})])?$`,
      'u',
    ),
    {
      error:
        'a name has 1 to 80 letters, digits, spaces and . _ - , ’ & + ( ) ×, and begins with a letter or a digit',
    },
  )
  .meta({ description: 'A name of your own choice, 1 to 80 characters.', examples: ['harbour chart'] });

/**
 * The value itself, or the name of one that the caller keeps. Names are replaced by what they stand for before a
 * spec is read; a name that is still there stands for nothing, and is refused.
 * @param noun what is kept, as in "a stored cutter"
 * @param route where such things are kept
 */
export const namedOr = <Schema extends z.core.$ZodType>(schema: Schema, noun: string, route: string) =>
  z.union([
    schema,
    storedName
      .transform((name, context) => {
        context.addIssue({
          code: 'custom',
          message: `nothing is kept under the name ${JSON.stringify(name)} here`,
          params: { remedy: `give the ${noun} itself, or keep one under that name with PUT ${route}/{name}` },
        });
        return z.NEVER;
      })
      .meta({ description: `The name of a ${noun} that you keep; GET ${route} lists yours.` }),
  ]);
