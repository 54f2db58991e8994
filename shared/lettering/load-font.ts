import type { Parsed } from '../lengths/parse-length.ts';
import type { Font } from './font.ts';
import { MOST_FONT_BYTES } from './font-choice.ts';
import { readKernTable } from './kern-table.ts';
import {
  damaged,
  type FontTables,
  OLD_TRUETYPE,
  OPENTYPE_CFF,
  readSfnt,
  TRUETYPE,
  viewOf,
  writeSfnt,
} from './sfnt.ts';
import { makeFont } from './shaped-font.ts';
import { readWoff } from './woff.ts';

/** Files that are fonts, but of a kind that is not read. */
const otherKinds: ReadonlyMap<number, string> = new Map([
  [0x774f4632, 'a WOFF2 file'], // "wOF2"
  [0x74746366, 'a collection of several fonts'], // "ttcf"
  [0x25215053, 'a PostScript Type 1 font'], // "%!PS"
  [0x74797031, 'a PostScript font in an old wrapping'], // "typ1"
]);

const WOFF = 0x774f4646; // "wOFF"

/**
 * Reads a font file: TTF, OTF or WOFF, at most {@link MOST_FONT_BYTES}. Only tables that concern outlines and
 * setting are kept; what outlines and rules say is read by HarfBuzz, which runs in a memory of its own and bounds its
 * work. It is loaded with the first font.
 * @returns the font, or what is wrong with the file and what to do about it
 */
export async function loadFont(bytes: Uint8Array): Promise<Parsed<Font>> {
  if (bytes.length > MOST_FONT_BYTES)
    return {
      ok: false,
      message: `the font file has ${Math.ceil(bytes.length / 1024)} KiB, more than ${MOST_FONT_BYTES / 1024} KiB`,
      remedy: 'export it with only the characters that you need, or as WOFF',
    };
  const unpacked = await unpack(bytes);
  if (!unpacked.ok) return unpacked;
  const { value } = unpacked;
  const head = checkHead(value);
  if (head) return head;
  const kern = value.tables.find(({ tag }) => tag === 'kern');
  return makeFont(await import('harfbuzzjs'), writeSfnt(value), kern && readKernTable(kern.data));
}

async function unpack(bytes: Uint8Array): Promise<Parsed<FontTables>> {
  const magic = bytes.length < 4 ? 0 : viewOf(bytes).getUint32(0);
  if (magic === WOFF) return await readWoff(bytes);
  if (magic === TRUETYPE || magic === OPENTYPE_CFF || magic === OLD_TRUETYPE) return readSfnt(bytes);
  const kind = otherKinds.get(magic);
  return {
    ok: false,
    message: kind === undefined ? 'the file is no font' : `the file is ${kind}, which is not read`,
    remedy: 'give a TTF, OTF or WOFF file',
  };
}

/** The magic number and the size of the em, which all other numbers hang on. */
function checkHead({ tables }: FontTables): Parsed<never> | undefined {
  const head = tables.find(({ tag }) => tag === 'head')?.data;
  if (!head || head.length < 54) return damaged('its head table is cut off');
  const view = viewOf(head);
  if (view.getUint32(12) !== 0x5f0f3cf5) return damaged('its head table has the wrong magic number');
  const em = view.getUint16(18);
  return em < 16 || em > 16384 ? damaged(`its em has ${em} units, where 16 to 16384 are allowed`) : undefined;
}
