import { crc32, inflateRawSync } from 'node:zlib';

/*
 * A reader of ZIP archives after PKWARE's published APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16; it shares nothing with
 * what writes them.
 */

export interface Unzipped {
  readonly name: string;
  readonly text: string;
  /** Date and time as the archive holds them. */
  readonly stamp: number;
}

/** @throws Error for what is no archive, or a file whose checksum is wrong */
export function unzip(bytes: Buffer): readonly Unzipped[] {
  const end = bytes.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  if (end < 0) throw new Error('no end of a central directory');
  let at = bytes.readUInt32LE(end + 16);
  return Array.from({ length: bytes.readUInt16LE(end + 10) }, () => {
    if (bytes.readUInt32LE(at) !== 0x02014b50) throw new Error(`no directory entry at ${at}`);
    const [method, packed, size] = [
      bytes.readUInt16LE(at + 10),
      bytes.readUInt32LE(at + 20),
      bytes.readUInt32LE(at + 24),
    ];
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => bytes.readUInt16LE(at + offset)) as [
      number,
      number,
      number,
    ];
    const local = bytes.readUInt32LE(at + 42);
    const name = bytes.toString('utf8', at + 46, at + 46 + nameLength);
    const stamp = bytes.readUInt32LE(at + 12);
    const checksum = bytes.readUInt32LE(at + 16);
    const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const raw = bytes.subarray(start, start + packed);
    const content = method === 8 ? inflateRawSync(raw) : raw;
    if (content.length !== size || crc32(content) !== checksum) throw new Error(`${name} is damaged`);
    at += 46 + nameLength + extra + comment;
    return { name, text: content.toString('utf8'), stamp };
  });
}
