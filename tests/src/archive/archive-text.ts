import { createHash } from 'node:crypto';
import { Writable } from 'node:stream';
import type { Archive } from '../../../src/archive/archive.ts';
import { commandLine } from '../../../src/members/audit.ts';

/** A stream that keeps what is written to it. */
export function textSink(): { readonly out: Writable; readonly text: () => string } {
  const parts: Buffer[] = [];
  const out = new Writable({
    write(part: Buffer, _encoding, done) {
      parts.push(part);
      done();
    },
  });
  return { out, text: () => Buffer.concat(parts).toString('utf8') };
}

/** Everything as the text of an archive. */
export async function exported(archive: Archive): Promise<string> {
  const { out, text } = textSink();
  await archive.exportTo(commandLine, out);
  return text();
}

/** The text as a source of bytes, in pieces of a size that splits lines anywhere. */
export const sourceOf = (text: string, pieceBytes = 1000) =>
  async function* () {
    const bytes = Buffer.from(text);
    for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes);
  };

export type Line = Record<string, unknown>;

export const linesOf = (text: string): Line[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));

/** Lines as an archive with a right end, so that nothing but the lines themselves can be at fault. */
export function sealed(lines: readonly Line[]): string {
  const body = lines.map((line) => `${JSON.stringify(line)}\n`).join('');
  const sha256 = createHash('sha256').update(body).digest('hex');
  return `${body}${JSON.stringify({ line: 'end', lines: lines.length, sha256 })}\n`;
}
