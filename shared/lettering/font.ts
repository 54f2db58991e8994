import type { Contour } from '../geometry/contour.ts';

/** A glyph in a line that has been set, in the font's units, y up. */
export interface SetGlyph {
  readonly id: number;
  /** Where in the text its characters begin, in UTF-16 units. */
  readonly cluster: number;
  /** How far the pen moves, kerning included. */
  readonly advance: number;
  /** From the pen to the glyph's origin. */
  readonly offset: { readonly x: number; readonly y: number };
}

/** A font that has been read and found sound, ready to set lines. */
export interface Font {
  readonly unitsPerEm: number;
  /** Height of capitals in the font's units. */
  readonly capHeight: number;
  /** Glyphs of a line in the order in which they are drawn, kerned and joined as the font asks for. */
  setLine(text: string): readonly SetGlyph[];
  /** The closed lines of a glyph in the font's units but with y down; they may cross. Empty for a space. */
  outlineOf(glyph: number): readonly Contour[];
}
