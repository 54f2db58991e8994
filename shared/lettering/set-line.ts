import type { Fault } from './fault.ts';
import type { Font, SetGlyph } from './font.ts';

/** A line of glyphs in the font's units, or why it cannot be set. */
export type SetLine =
  | { readonly ok: true; readonly glyphs: readonly SetGlyph[] }
  | { readonly ok: false; readonly fault: Fault };

/** Rules of a font may make several glyphs of a character; more than this for 60 characters is no lettering. */
const MOST_GLYPHS = 400;

/** Sets a line and refuses what the font cannot draw, naming the characters: no box ever stands for a letter. */
export function setLine(text: string, font: Font): SetLine {
  const glyphs = font.setLine(text);
  if (glyphs.length > MOST_GLYPHS)
    return refuse('the font turns the text into more glyphs than a line can have', 'use another font');
  const lacking = charactersAt(
    text,
    glyphs.filter(({ id }) => id === 0),
  );
  if (lacking.length > 0)
    return refuse(
      `the font has no ${lacking.map(quote).join(', no ')}`,
      'leave it out, write it another way, or use a font that has it',
    );
  const drawn = new Set(
    glyphs.flatMap(({ id, cluster }) => (font.outlineOf(id).length > 0 ? [cluster] : [])),
  );
  const blank = charactersAt(
    text,
    glyphs.filter(({ cluster }) => !drawn.has(cluster)),
  ).filter((character) => !isBlank(character));
  if (blank.length > 0)
    return refuse(`the font has no outline for ${blank.map(quote).join(', ')}`, 'use another font');
  return { ok: true, glyphs };
}

const refuse = (message: string, remedy: string): SetLine => ({
  ok: false,
  fault: { path: ['lettering'], message, remedy },
});

/** The characters that glyphs stand for, each named once. */
function charactersAt(text: string, glyphs: readonly SetGlyph[]): string[] {
  const clusters = new Set(glyphs.map(({ cluster }) => cluster));
  return [...new Set([...clusters].map((at) => String.fromCodePoint(text.codePointAt(at) ?? 0xfffd)))];
}

/** Spaces, and marks without a shape of their own such as joiners. */
const isBlank = (character: string): boolean =>
  /^[\s\p{Zs}\p{Default_Ignorable_Code_Point}]$/u.test(character);

/** A character as people know it, with its number where it may not show. */
const quote = (character: string): string =>
  `"${character}" (U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')})`;
