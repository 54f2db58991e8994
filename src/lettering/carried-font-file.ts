import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type CarriedFontName, carriedFonts } from '../../shared/lettering/carried-fonts.ts';

/** Thrown when a font that comes with the program is missing or damaged: the installation is at fault. */
export class FontMissing extends Error {
  constructor(name: CarriedFontName, options: ErrorOptions) {
    super(
      `the font "${name}" that comes with the program cannot be read: install its packages again`,
      options,
    );
    this.name = 'FontMissing';
  }
}

/** The file of a carried font, from its package. Throws {@link FontMissing}. */
export async function carriedFontFile(
  name: CarriedFontName,
  find: (specifier: string) => string = import.meta.resolve,
): Promise<Uint8Array> {
  const font = carriedFonts.find((one) => one.name === name);
  if (!font) throw new Error(`no font is called ${name}`);
  try {
    return await readFile(fileURLToPath(find(`${font.source}/${font.file}`)));
  } catch (error) {
    throw new FontMissing(name, { cause: error });
  }
}
