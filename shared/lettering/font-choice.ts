import { z } from 'zod';
import { type CarriedFontName, carriedFontNames } from './carried-fonts.ts';
import type { Font } from './font.ts';

/**
 * The largest font file that a spec may carry. As base64 it takes 4/3 of that, 213 KiB, which leaves 40 KiB of a
 * request of 256 KiB for the rest. A Latin font of one weight has 15 to 120 KiB.
 */
export const MOST_FONT_BYTES = 160 * 1024;

const mostBase64 = Math.ceil(MOST_FONT_BYTES / 3) * 4;

const ownFont = z
  .strictObject({
    file: z
      .base64({ error: 'a font file is given as base64 (RFC 4648, section 4, with padding)' })
      .min(1, { error: 'the font file is empty' })
      .max(mostBase64, { error: `a font file has at most ${MOST_FONT_BYTES / 1024} KiB` })
      .meta({
        description: `A TTF, OTF or WOFF file as base64, at most ${MOST_FONT_BYTES / 1024} KiB before encoding.`,
      }),
  })
  .meta({ id: 'OwnFont', description: 'A font of the user’s own; whoever gives it sees to its licence.' });

/** A carried font by its name, or a file. */
export const fontChoice = z
  .union([z.enum(carriedFontNames), ownFont], {
    error: `a font is one of ${carriedFontNames.join(', ')}, or a file as { "file": base64 }`,
  })
  .meta({ description: 'A font that comes along, by name, or one of your own. Default: plain.' });

export type FontChoice = z.output<typeof fontChoice>;

/** What a spec that names no font is set in. */
export const usualFont: CarriedFontName = 'plain';

/** Fonts that were opened for a spec, by {@link fontKey}. */
export type FontShelf = ReadonlyMap<string, Font>;

/** What tells one choice from another: the name, or all of the file. */
export const fontKey = (choice: FontChoice = usualFont): string =>
  typeof choice === 'string' ? choice : `file:${choice.file}`;
