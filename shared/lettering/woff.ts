import type { Parsed } from '../lengths/parse-length.ts';
import {
  checkTables,
  damaged,
  type FontTables,
  isKept,
  MOST_TABLES,
  MOST_UNPACKED_BYTES,
  type Table,
  tagAt,
  viewOf,
} from './sfnt.ts';

/**
 * Unpacks WOFF 1: tables of a font, each perhaps packed by zlib.
 * Source: WOFF File Format 1.0, W3C Recommendation, 13 December 2012.
 */
export async function readWoff(bytes: Uint8Array): Promise<Parsed<FontTables>> {
  const view = viewOf(bytes);
  if (bytes.length < 44) return damaged('it ends before its header does');
  const count = view.getUint16(12);
  if (count === 0 || count > MOST_TABLES) return damaged(`it says that it has ${count} tables`);
  if (bytes.length < 44 + 20 * count) return damaged('its directory is cut off');
  const tables: Table[] = [];
  let room = MOST_UNPACKED_BYTES;
  for (let i = 0; i < count; i++) {
    const entry = 44 + 20 * i;
    const tag = tagAt(view, entry);
    const offset = view.getUint32(entry + 4);
    const packed = view.getUint32(entry + 8);
    const length = view.getUint32(entry + 12);
    const name = JSON.stringify(tag);
    if (offset + packed > bytes.length) return damaged(`its table ${name} reaches beyond its end`);
    if (packed > length) return damaged(`its table ${name} is larger packed than unpacked`);
    if (!isKept(tag)) continue;
    room -= length;
    if (room < 0) return damaged('its tables take more than 2 MiB');
    const stored = bytes.subarray(offset, offset + packed);
    const data = packed < length ? await inflate(stored, length) : stored;
    if (!data) return damaged(`its table ${name} does not unpack to the ${length} bytes that it promises`);
    tables.push({ tag, data });
  }
  return checkTables({ flavour: view.getUint32(4), tables });
}

/** Unpacks exactly `length` bytes; nothing when there are more or fewer, or when they are no zlib stream. */
async function inflate(packed: Uint8Array, length: number): Promise<Uint8Array | undefined> {
  const data = new Uint8Array(length);
  const reader = new Blob([new Uint8Array(packed)])
    .stream()
    .pipeThrough(new DecompressionStream('deflate'))
    .getReader();
  try {
    for (let filled = 0; ; ) {
      const { done, value } = await reader.read();
      if (done) return filled === length ? data : undefined;
      if (filled + value.length > length) {
        // a bomb is not unpacked to its end
        await reader.cancel();
        return undefined;
      }
      data.set(value, filled);
      filled += value.length;
    }
  } catch {
    return undefined;
  }
}
