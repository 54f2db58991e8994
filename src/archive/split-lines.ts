import { BadArchive } from './bad-archive.ts';

/** Far above any line: a body has 256 KiB at most. */
export const mostLineBytes = 1024 * 1024;

const newline = 0x0a;

/**
 * The lines of a file as bytes, each without the newline that ends it.
 * @throws {BadArchive} for a line that is too long, and for a last line that no newline ends
 */
export async function* splitLines(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Buffer> {
  let rest: Buffer = Buffer.alloc(0);
  let line = 1;
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(newline); end !== -1; end = chunk.indexOf(newline, from)) {
      const piece = chunk.subarray(from, end);
      const whole = rest.length === 0 ? Buffer.from(piece) : Buffer.concat([rest, piece]);
      if (whole.length > mostLineBytes) throw new BadArchive(line, 'is longer than 1 MiB.');
      yield whole;
      rest = Buffer.alloc(0);
      from = end + 1;
      line++;
    }
    rest = Buffer.concat([rest, chunk.subarray(from)]);
    if (rest.length > mostLineBytes) throw new BadArchive(line, 'is longer than 1 MiB.');
  }
  if (rest.length > 0) throw new BadArchive(line, 'is cut off: the file is not whole.');
}
