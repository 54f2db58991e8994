import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../shared/lengths/nanometres.ts';
import { MOST_FONT_BYTES } from '../../shared/lettering/font-choice.ts';
import { loadFont } from '../../shared/lettering/load-font.ts';
import { type Table, writeSfnt } from '../../shared/lettering/sfnt.ts';
import { readWoff } from '../../shared/lettering/woff.ts';
import { writeLetters } from '../../shared/lettering/write-letters.ts';
import { carriedFontFile } from '../../src/lettering/carried-font-file.ts';
import { CALIPER } from '../support/fonts.ts';

/*
 * Fonts that lie. Each is refused with a reason and a remedy, or draws letters; none crashes, hangs or fills the memory.
 */

const TRUETYPE = 0x00010000;
// a copy, since a Buffer's slices share its memory
const woff = Uint8Array.from(await carriedFontFile('script'));
const unpacked = await readWoff(woff);
const tables: readonly Table[] = unpacked.ok ? unpacked.value.tables : [];
const sound = writeSfnt({ flavour: TRUETYPE, tables });

const tableOf = (tag: string): Uint8Array => {
  const table = tables.find((one) => one.tag === tag);
  if (!table) throw new Error(`no table ${tag}`);
  return table.data.slice();
};

/** The font with one table changed, left out or added. */
const withTable = (tag: string, data: Uint8Array | undefined): Uint8Array =>
  writeSfnt({
    flavour: TRUETYPE,
    tables: [...tables.filter((one) => one.tag !== tag), ...(data ? [{ tag, data }] : [])],
  });

function changed(file: Uint8Array, change: (view: DataView) => void): Uint8Array {
  const copy = Uint8Array.from(file);
  change(new DataView(copy.buffer));
  return copy;
}

/** What becomes of a file: the reason why it is refused, be it when it is read or when a line is set; or drawn. */
async function fateOf(file: Uint8Array, lettering = 'Harbour & 08 fi'): Promise<string> {
  const font = await loadFont(file);
  if (!font.ok) return font.remedy === '' ? 'refused without a remedy' : font.message;
  const letters = writeLetters({ lettering, height: mm(20) }, font.value, CALIPER);
  return letters.ok ? 'drawn' : letters.faults.map(({ message }) => message).join('; ');
}

/** Where a table's entry lies in the directory. */
const entryOf = (tag: string): number => 12 + 16 * tables.findIndex((one) => one.tag === tag);

describe('a sound font', () => {
  test('is drawn, packed or not', async () => {
    expect(await fateOf(sound)).toBe('drawn');
    expect(await fateOf(woff)).toBe('drawn');
  });
});

describe('files that are refused when they are read', () => {
  test.each<[string, Uint8Array, string | RegExp]>([
    ['nothing', new Uint8Array(0), 'the file is no font'],
    ['three bytes', Uint8Array.of(0, 1, 0), 'the file is no font'],
    ['text', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'the file is no font'],
    ['WOFF2', Buffer.from('wOF2 and more than that'), /WOFF2 file, which is not read/u],
    ['a collection', Buffer.from('ttcf and more than that'), /collection of several fonts/u],
    ['only a magic number', sound.slice(0, 4), /ends before its directory/u],
    ['half a directory', sound.slice(0, 40), /directory is cut off/u],
    ['half a file', sound.slice(0, sound.length / 2), /reaches beyond its end/u],
    ['no tables', changed(sound, (view) => view.setUint16(4, 0)), /0 tables/u],
    ['65,535 tables', changed(sound, (view) => view.setUint16(4, 65535)), /65535 tables/u],
    [
      'a table at 4 GiB',
      changed(sound, (view) => view.setUint32(entryOf('cmap') + 8, 0xffffffff)),
      /"cmap" reaches beyond/u,
    ],
    [
      'a table of 4 GiB',
      changed(sound, (view) => view.setUint32(entryOf('glyf') + 12, 0xffffffff)),
      /"glyf" reaches beyond/u,
    ],
    [
      'a table twice',
      writeSfnt({ flavour: TRUETYPE, tables: [...tables, { tag: 'cmap', data: tableOf('cmap') }] }),
      /"cmap" twice/u,
    ],
    ['no characters', withTable('cmap', undefined), /lacks the table "cmap"/u],
    ['a cmap of noise', withTable('cmap', new Uint8Array(300).fill(0xff)), /no characters/u],
    ['no outlines', withTable('glyf', undefined), /no outlines that can be cut/u],
    ['a short head', withTable('head', tableOf('head').slice(0, 20)), /head table is cut off/u],
    [
      'the wrong magic in its head',
      withTable(
        'head',
        changed(tableOf('head'), (view) => view.setUint32(12, 0)),
      ),
      /wrong magic number/u,
    ],
    [
      'an em of nothing',
      withTable(
        'head',
        changed(tableOf('head'), (view) => view.setUint16(18, 0)),
      ),
      /em has 0 units/u,
    ],
    ['too much of everything', new Uint8Array(MOST_FONT_BYTES + 1), /more than 160 KiB/u],
  ])('%s', async (_, file, reason) => {
    const fate = await fateOf(file);
    if (typeof reason === 'string') expect(fate).toBe(reason);
    else expect(fate).toMatch(reason);
  });
});

describe('packed files that lie', () => {
  /** A WOFF of one table that says what it likes about itself. */
  function packed(data: Uint8Array, promised: number): Uint8Array {
    const header = new DataView(new ArrayBuffer(64));
    header.setUint32(0, 0x774f4646);
    header.setUint32(4, TRUETYPE);
    header.setUint16(12, 1);
    header.setUint32(44, 0x676c7966); // "glyf"
    header.setUint32(48, 64);
    header.setUint32(52, data.length);
    header.setUint32(56, promised);
    return Buffer.concat([new Uint8Array(header.buffer), data]);
  }

  test.each<[string, Uint8Array, RegExp]>([
    [
      'a bomb that says so',
      packed(deflateSync(new Uint8Array(100_000_000)), 100_000_000),
      /more than 2 MiB/u,
    ],
    ['a bomb that hides it', packed(deflateSync(new Uint8Array(100_000_000)), 1_000_000), /does not unpack/u],
    ['less than promised', packed(deflateSync(new Uint8Array(100)), 5_000), /does not unpack/u],
    ['noise', packed(new Uint8Array(500).fill(0xa5), 5_000), /does not unpack/u],
    ['larger packed', packed(new Uint8Array(500), 5), /larger packed/u],
    ['half a file', woff.slice(0, woff.length / 2), /beyond its end/u],
    ['half a directory', woff.slice(0, 100), /directory is cut off/u],
    ['half a header', woff.slice(0, 20), /before its header/u],
  ])('%s', async (_, file, reason) => {
    expect(await fateOf(file)).toMatch(reason);
  });
});

describe('outlines and rules that lie', () => {
  /** One triangle, as a simple glyph. */
  function triangle(): Uint8Array {
    const view = new DataView(new ArrayBuffer(30));
    view.setInt16(0, 1); // contours
    view.setUint16(10, 2); // its last point
    for (const point of [0, 1, 2]) view.setUint8(14 + point, 1);
    for (const [index, step] of [0, 500, 0, 0, 0, 500].entries()) view.setInt16(17 + 2 * index, step);
    return new Uint8Array(view.buffer);
  }

  /** A font whose letters are each made of ten of the next one, but for the last, which is a triangle. */
  function compositeFont(letters: number): Uint8Array {
    const copies = 10;
    const parts: Uint8Array[] = [triangle()]; // the box for what the font lacks
    for (let i = 1; i < letters; i++) {
      const glyph = new DataView(new ArrayBuffer(10 + copies * 6));
      glyph.setInt16(0, -1);
      for (let copy = 0; copy < copies; copy++) {
        const at = 10 + copy * 6;
        glyph.setUint16(at, copy + 1 < copies ? 0x0022 : 0x0002); // more to come; offsets are bytes
        glyph.setUint16(at + 2, i + 1);
        glyph.setInt8(at + 4, 8 * copy);
      }
      parts.push(new Uint8Array(glyph.buffer));
    }
    parts.push(triangle());
    const loca = new DataView(new ArrayBuffer(4 * (parts.length + 1)));
    for (let i = 0, at = 0; i <= parts.length; at += parts[i]?.length ?? 0, i++) loca.setUint32(4 * i, at);
    const count = parts.length;
    return writeSfnt({
      flavour: TRUETYPE,
      tables: [
        { tag: 'glyf', data: Buffer.concat(parts) },
        { tag: 'loca', data: new Uint8Array(loca.buffer) },
        { tag: 'head', data: changed(tableOf('head'), (view) => view.setUint16(50, 1)) },
        { tag: 'maxp', data: changed(tableOf('maxp'), (view) => view.setUint16(4, count)) },
        { tag: 'hmtx', data: new Uint8Array(4 * count).fill(2) },
        { tag: 'hhea', data: changed(tableOf('hhea'), (view) => view.setUint16(34, count)) },
        { tag: 'cmap', data: cmapFrom(0x41, letters) },
      ],
    });
  }

  /** A character map of one run: characters from `first` on are glyphs from 1 on. */
  function cmapFrom(first: number, count: number): Uint8Array {
    const view = new DataView(new ArrayBuffer(12 + 32));
    for (const [index, word] of [0, 1, 3, 1, 0, 12].entries()) view.setUint16(2 * index, word);
    const last = first + count - 1;
    const subtable = [4, 32, 0, 4, 4, 1, 0, last, 0xffff, 0, first, 0xffff, (1 - first) & 0xffff, 1, 0, 0];
    for (const [index, word] of subtable.entries()) view.setUint16(12 + 2 * index, word);
    return new Uint8Array(view.buffer);
  }

  test('a letter made of ten others is drawn, one made of 10²⁰ is refused', async () => {
    expect(await fateOf(compositeFont(2), 'A')).toBe('drawn');
    expect(await fateOf(compositeFont(21), 'U')).toBe('drawn');
    expect(await fateOf(compositeFont(21), 'A')).toMatch(/no outline for "A"|closed lines|straight parts/u);
  });

  test.each([
    ['glyf', 0xff],
    ['loca', 0xff],
    ['loca', 0x00],
    ['GPOS', 0xff],
    ['GPOS', 0x01],
    ['GSUB', 0xff],
    ['GDEF', 0xff],
    ['hmtx', 0xff],
    ['maxp', 0xff],
    ['OS/2', 0xff],
  ])('a %s of nothing but %i', async (tag, filler) => {
    const fate = await fateOf(withTable(tag, tableOf(tag).fill(filler)));
    expect(fate).toMatch(/^drawn$|^the font/u);
  });

  test('any bytes changed, anywhere', async () => {
    const byte = fc.tuple(fc.nat(sound.length - 1), fc.integer({ min: 0, max: 255 }));
    const fates = new Set<string>();
    await fc.assert(
      fc.asyncProperty(fc.array(byte, { minLength: 1, maxLength: 40 }), async (bytes) => {
        const file = sound.slice();
        for (const [at, value] of bytes) file[at] = value;
        const fate = await fateOf(file, 'Hb8');
        fates.add(fate.slice(0, 8));
        expect(fate).toMatch(/^drawn$|^the (?:font|file|lettering)|^bridges/u);
      }),
      { numRuns: 150 },
    );
    expect(fates).toContain('drawn');
    expect(fates.size).toBeGreaterThan(1);
  });

  test('any bytes cut off', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(sound.length - 1), async (length) => {
        expect(await fateOf(sound.slice(0, length))).toMatch(
          /^the font file is damaged|^the file is no font/u,
        );
        expect(await fateOf(woff.slice(0, Math.min(length, woff.length - 1)))).not.toBe('');
      }),
      { numRuns: 60 },
    );
  });
});
