import { LRUCache } from 'lru-cache';
import type { Parsed } from '../../shared/lengths/parse-length.ts';
import type { CarriedFontName } from '../../shared/lettering/carried-fonts.ts';
import type { Fault } from '../../shared/lettering/fault.ts';
import type { Font } from '../../shared/lettering/font.ts';
import { type FontChoice, type FontShelf, fontKey, usualFont } from '../../shared/lettering/font-choice.ts';
import { loadFont } from '../../shared/lettering/load-font.ts';
import { carriedFontFile, FontMissing } from './carried-font-file.ts';

/** Fonts for what was asked, and why some cannot be had, both by {@link fontKey}. */
export interface OpenedFonts {
  readonly shelf: FontShelf;
  /** Paths start at the knockout's spec. */
  readonly faults: ReadonlyMap<string, Fault>;
}

/** Carried fonts, once read; there are few, so they stay. A failed read is forgotten, so that it is tried again. */
const carried = new Map<CarriedFontName, Promise<Parsed<Font>>>();

/** Users' fonts by the whole of their files: reading one takes some milliseconds, the same file comes with every change. */
const own = new LRUCache<string, Promise<Parsed<Font>>>({ max: 16 });

/**
 * Opens every font that a spec asks for; ask before planning, which is synchronous.
 * Throws `FontMissing` when a font that comes with the program is not installed, or damaged.
 */
export async function fontShelf(choices: readonly (FontChoice | undefined)[]): Promise<OpenedFonts> {
  const wanted = new Map(choices.map((choice = usualFont) => [fontKey(choice), choice]));
  const shelf = new Map<string, Font>();
  const faults = new Map<string, Fault>();
  for (const [key, choice] of wanted) {
    const opened = await open(choice);
    if (opened.ok) shelf.set(key, opened.value);
    else faults.set(key, { path: ['font', 'file'], message: opened.message, remedy: opened.remedy });
  }
  return { shelf, faults };
}

const open = (choice: FontChoice): Promise<Parsed<Font>> =>
  typeof choice === 'string' ? openCarried(choice) : openOwn(choice.file);

function openCarried(name: CarriedFontName): Promise<Parsed<Font>> {
  const known = carried.get(name);
  if (known) return known;
  const opening = carriedFontFile(name)
    .then(loadFont)
    .then((font) => (font.ok ? font : Promise.reject(new FontMissing(name, { cause: font.message }))));
  carried.set(name, opening);
  opening.catch(() => carried.delete(name));
  return opening;
}

function openOwn(base64: string): Promise<Parsed<Font>> {
  const known = own.get(base64);
  if (known) return known;
  const opening = loadFont(Buffer.from(base64, 'base64'));
  own.set(base64, opening);
  return opening;
}
