import { create, type Font as OtherFont } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../shared/geometry/area.ts';
import { boundsOf } from '../../shared/geometry/bounds.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { type CarriedFontName, carriedFonts } from '../../shared/lettering/carried-fonts.ts';
import { loadFont } from '../../shared/lettering/load-font.ts';
import { type Table, writeSfnt } from '../../shared/lettering/sfnt.ts';
import { readWoff } from '../../shared/lettering/woff.ts';
import { carriedFontFile } from '../../src/lettering/carried-font-file.ts';
import { carriedFont, write } from '../support/fonts.ts';
import { cutPage, paintedArea } from '../support/paper-pieces.ts';
import { sailFont } from '../support/sail-font.ts';

/*
 * The carried fonts as fontkit 2 reads them: another author's code, in another language, with its own unpacking, its own
 * rules of kerning and joining, and its own outlines.
 */
async function otherReading(name: CarriedFontName): Promise<OtherFont> {
  const font = create(Buffer.from(await carriedFontFile(name)));
  if (!('layout' in font)) throw new Error('a collection');
  return font;
}

const words = [
  ...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&?!.,-',
  ...[
    'AV',
    'To',
    'LAVA',
    'Ye Olde',
    'Wave 17',
    'fi ffl',
    'Hafen',
    'Harbour Light',
    'AA',
    'oooo',
    'Größe',
    'P.',
  ],
];

describe.each(carriedFonts)('$name', ({ name }) => {
  test('has the same em and the same height of capitals', async () => {
    const font = await carriedFont(name);
    const other = await otherReading(name);
    expect([font.unitsPerEm, font.capHeight]).toEqual([other.unitsPerEm, other.capHeight]);
  });

  test('sets the same glyphs with the same advances: widths, kerning, joins', async () => {
    const font = await carriedFont(name);
    const other = await otherReading(name);
    const ours = words.map((word) => [word, font.setLine(word).map(({ id, advance }) => [id, advance])]);
    const theirs = words.map((word) => {
      const { glyphs, positions } = other.layout(word);
      return [word, glyphs.map(({ id }, index) => [id, positions[index]?.xAdvance])];
    });
    expect(ours).toEqual(theirs);
  });

  test('kerns at all, so that the comparison above says something', async () => {
    const font = await carriedFont(name);
    const length = (text: string) => font.setLine(text).reduce((sum, { advance }) => sum + advance, 0);
    const kerned = ['AV', 'To', 'Ta', 'P.', 'Yo', 'VA', 'oo', 'rt', 'L1'].filter(
      (pair) => length(pair) !== [...pair].reduce((sum, letter) => sum + length(letter), 0),
    );
    expect(kerned).not.toEqual([]);
  });

  test('draws outlines within the same bounds', async () => {
    const font = await carriedFont(name);
    const other = await otherReading(name);
    for (const glyph of font.setLine('BQeg8&Å')) {
      const { left, top, right, bottom } = boundsOf(font.outlineOf(glyph.id));
      const { minX, minY, maxX, maxY } = other.getGlyph(glyph.id).path.bbox;
      const theirs = [minX, -maxY, maxX, -minY];
      for (const [index, ours] of [left, top, right, bottom].entries())
        expect(Math.abs(ours - (theirs[index] ?? 0))).toBeLessThan(0.01);
    }
  });
});

test('a line is as wide and covers as many pixels as the other library’s glyphs do', async () => {
  const text = 'Quay 8';
  const other = await otherReading('plain');
  const { shape } = write(await carriedFont('plain'), { lettering: text, height: mm(20), bridges: 'none' });
  const dpi = 300;
  const inPixels = paintedArea(cutPage(shape, dpi), dpi);
  expect(inPixels / (areaOf(shape) / 1e12)).toBeCloseTo(1, 3);
  const { glyphs, positions } = other.layout(text);
  const before = positions.slice(0, -1).reduce((sum, { xAdvance }) => sum + xAdvance, 0);
  const unit = mm(20) / other.capHeight;
  const { left, right } = boundsOf(shape);
  expect(left / ((glyphs[0]?.path.bbox.minX ?? 0) * unit)).toBeCloseTo(1, 5);
  expect(right / ((before + (glyphs.at(-1)?.path.bbox.maxX ?? 0)) * unit)).toBeCloseTo(1, 5);
});

describe('fonts of other kinds', () => {
  test('an OTF with PostScript outlines', async () => {
    const font = await loadFont(sailFont);
    if (!font.ok) throw new Error(font.message);
    const { shape } = write(font.value, { lettering: 'D', height: mm(20) });
    // by hand: the cubic (0, 0) (a, 0) (a, h) (0, h) encloses a·h·3/5 with its chord: a = 400, h = 700
    const unit = mm(20) / font.value.capHeight;
    expect(areaOf(shape) / ((400 * 700 * 3) / 5) / unit ** 2).toBeCloseTo(1, 5);
  });

  test('pairs of an old kern table are read where GPOS has none', async () => {
    const unpacked = await readWoff(await carriedFontFile('plain'));
    if (!unpacked.ok) throw new Error(unpacked.message);
    const [a, v] = [0x41, 0x56].map((character) => fontOfPlain.glyphForCodePoint(character).id);
    const kern = new DataView(new ArrayBuffer(4 + 14 + 6));
    // version 0, one subtable: version 0, 20 bytes, horizontal, one pair (OpenType 1.9.1, "kern")
    for (const [index, word] of [0, 1, 0, 20, 1, 1, 6, 0, 0, a ?? 0, v ?? 0, -77].entries())
      kern.setInt16(2 * index, word);
    const tables: Table[] = [
      ...unpacked.value.tables.filter(({ tag }) => tag !== 'GPOS'),
      { tag: 'kern', data: new Uint8Array(kern.buffer) },
    ];
    const font = await loadFont(writeSfnt({ flavour: unpacked.value.flavour, tables }));
    if (!font.ok) throw new Error(font.message);
    const advances = (text: string) => font.value.setLine(text).map(({ advance }) => advance);
    const [alone = 0] = advances('A');
    expect(advances('AV')[0]).toBe(alone - 77);
    expect(advances('AA')[0]).toBe(alone);
  });
});

const fontOfPlain = await otherReading('plain');
