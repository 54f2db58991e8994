import type { Parsed } from '../lengths/parse-length.ts';

/**
 * The container of TTF and OTF: a directory and tables.
 * Source: OpenType specification 1.9.1 (= ISO/IEC 14496-22), "The OpenType Font File".
 */

/** One table of a font, by its four letters. */
export interface Table {
  readonly tag: string;
  readonly data: Uint8Array;
}

/** What a font holds, of all that concerns lettering. */
export interface FontTables {
  /** 0x00010000 for TrueType outlines, `OTTO` for those of PostScript. */
  readonly flavour: number;
  readonly tables: readonly Table[];
}

export const TRUETYPE = 0x00010000;
export const OLD_TRUETYPE = 0x74727565; // "true"
export const OPENTYPE_CFF = 0x4f54544f; // "OTTO"

/** Fonts have about 20 tables; the directory's count is a 16-bit number. */
export const MOST_TABLES = 64;

/** What is kept of a font, unpacked: 12 times the largest file. */
export const MOST_UNPACKED_BYTES = 2 * 1024 * 1024;

/** Tables that setting and drawing a line need; all others are left out before anything reads them. */
const kept: ReadonlySet<string> = new Set([
  'CFF ',
  'GDEF',
  'GPOS',
  'GSUB',
  'OS/2',
  'cmap',
  'glyf',
  'head',
  'hhea',
  'hmtx',
  'kern',
  'loca',
  'maxp',
]);

export const isKept = (tag: string): boolean => kept.has(tag);

export const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Four bytes as the letters that they stand for. */
export const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));

const whole = 'export the font again as TTF, OTF or WOFF, or use another';

export const damaged = (what: string): Parsed<never> => ({
  ok: false,
  message: `the font file is damaged: ${what}`,
  remedy: whole,
});

/** Reads the directory of a TTF or OTF file and takes the tables that are needed. */
export function readSfnt(bytes: Uint8Array): Parsed<FontTables> {
  const view = viewOf(bytes);
  if (bytes.length < 12) return damaged('it ends before its directory');
  const count = view.getUint16(4);
  if (count === 0 || count > MOST_TABLES) return damaged(`it says that it has ${count} tables`);
  if (bytes.length < 12 + 16 * count) return damaged('its directory is cut off');
  const tables: Table[] = [];
  for (let i = 0; i < count; i++) {
    const entry = 12 + 16 * i;
    const tag = tagAt(view, entry);
    const offset = view.getUint32(entry + 8);
    const length = view.getUint32(entry + 12);
    if (offset + length > bytes.length)
      return damaged(`its table ${JSON.stringify(tag)} reaches beyond its end`);
    if (isKept(tag)) tables.push({ tag, data: bytes.subarray(offset, offset + length) });
  }
  return checkTables({ flavour: view.getUint32(0), tables });
}

/** Refuses what lacks a table, has one twice, or is too large unpacked. */
export function checkTables(font: FontTables): Parsed<FontTables> {
  const tags = font.tables.map(({ tag }) => tag);
  const twice = tags.find((tag, index) => tags.indexOf(tag) !== index);
  if (twice !== undefined) return damaged(`it has the table ${JSON.stringify(twice)} twice`);
  const size = font.tables.reduce((sum, { data }) => sum + data.length, 0);
  if (size > MOST_UNPACKED_BYTES) return damaged('its tables take more than 2 MiB');
  const missing = ['head', 'hhea', 'hmtx', 'maxp', 'cmap'].find((tag) => !tags.includes(tag));
  if (missing !== undefined) return damaged(`it lacks the table "${missing}"`);
  if (!tags.includes('CFF ') && !(tags.includes('glyf') && tags.includes('loca')))
    return {
      ok: false,
      message: 'the font has no outlines that can be cut, perhaps only bitmaps or coloured pictures',
      remedy: 'use a font with TrueType or PostScript outlines',
    };
  return { ok: true, value: font };
}

/** A font file of the tables given. */
export function writeSfnt({ flavour, tables }: FontTables): Uint8Array {
  const padded = (length: number) => (length + 3) & ~3;
  const start = 12 + 16 * tables.length;
  const bytes = new Uint8Array(tables.reduce((end, { data }) => end + padded(data.length), start));
  const view = viewOf(bytes);
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  let offset = start;
  for (const [index, { tag, data }] of tables.entries()) {
    const entry = 12 + 16 * index;
    for (let i = 0; i < 4; i++) view.setUint8(entry + i, tag.charCodeAt(i));
    view.setUint32(entry + 8, offset);
    view.setUint32(entry + 12, data.length);
    bytes.set(data, offset);
    offset += padded(data.length);
  }
  return bytes;
}
