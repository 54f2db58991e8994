import { mm } from '../../shared/lengths/nanometres.ts';
import type { CarriedFontName } from '../../shared/lettering/carried-fonts.ts';
import type { Font } from '../../shared/lettering/font.ts';
import type { LetteringSpec } from '../../shared/lettering/lettering-spec.ts';
import { loadFont } from '../../shared/lettering/load-font.ts';
import { type Letters, writeLetters } from '../../shared/lettering/write-letters.ts';
import { carriedFontFile } from '../../src/lettering/carried-font-file.ts';

/** 0.3 mm, a usual caliper of card. */
export const CALIPER = mm(0.3);

export async function carriedFont(name: CarriedFontName): Promise<Font> {
  const font = await loadFont(await carriedFontFile(name));
  if (!font.ok) throw new Error(font.message);
  return font.value;
}

/** Letters that have to come out. */
export function write(font: Font, spec: LetteringSpec): Extract<Letters, { ok: true }> {
  const letters = writeLetters(spec, font, CALIPER);
  if (!letters.ok) throw new Error(letters.faults.map(({ message }) => message).join('; '));
  return letters;
}
