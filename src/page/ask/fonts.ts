import plainFont from '@fontsource/alata/files/alata-latin-400-normal.woff?url';
import scriptFont from '@fontsource/pacifico/files/pacifico-latin-400-normal.woff?url';
import stencilFont from '@fontsource/saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff?url';
import type { CarriedFontName } from '../../../shared/lettering/carried-fonts.ts';
import type { Font } from '../../../shared/lettering/font.ts';
import { type FontChoice, type FontShelf, fontKey } from '../../../shared/lettering/font-choice.ts';
import { loadFont } from '../../../shared/lettering/load-font.ts';

const carried: Readonly<Record<CarriedFontName, string>> = {
  plain: plainFont,
  stencil: stencilFont,
  script: scriptFont,
};

async function bytesOf(choice: FontChoice): Promise<Uint8Array> {
  if (typeof choice !== 'string') return Uint8Array.from(atob(choice.file), (letter) => letter.charCodeAt(0));
  const reply = await fetch(carried[choice]);
  return new Uint8Array(await reply.arrayBuffer());
}

/** Fonts that were opened, by their keys; few, so they stay. */
const opened = new Map<string, Font>();

/** Opens fonts; one that cannot be read is left out, and the core says that it is missing. */
export async function openFonts(choices: readonly FontChoice[]): Promise<FontShelf> {
  for (const choice of choices) {
    const key = fontKey(choice);
    if (opened.has(key)) continue;
    const font = await loadFont(await bytesOf(choice));
    if (font.ok) opened.set(key, font.value);
  }
  return opened;
}
