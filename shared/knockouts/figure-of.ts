import { readArtwork } from '../artwork/read-artwork.ts';
import type { Shape } from '../geometry/contour.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { Fault } from '../lettering/fault.ts';
import { type FontShelf, fontKey } from '../lettering/font-choice.ts';
import { writeLetters } from '../lettering/write-letters.ts';
import type { KnockoutOf } from './knockout-spec.ts';
import { outlineOf, shapeFaults } from './shapes/registry.ts';

export type FigureSpec = KnockoutOf<'figure'>['figure'];

/** What figures are drawn with. */
export interface FigureContext {
  readonly fonts: FontShelf;
  /** Of the folder's sheet. */
  readonly caliper: Nm;
}

export type Drawn =
  | { readonly ok: true; readonly shape: Shape }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The outline of a figure by itself, upright; faults carry paths from its own spec. */
export function figureOf(spec: FigureSpec, { fonts, caliper }: FigureContext): Drawn {
  if ('shape' in spec) {
    const faults = shapeFaults(spec);
    return faults.length > 0 ? { ok: false, faults } : { ok: true, shape: outlineOf(spec) };
  }
  if ('artwork' in spec) return readArtwork(spec, caliper);
  const font = fonts.get(fontKey(spec.font));
  if (!font)
    return {
      ok: false,
      faults: [
        { path: ['font'], message: 'the font was not opened', remedy: 'name a font that comes along' },
      ],
    };
  return writeLetters(spec, font, caliper);
}
