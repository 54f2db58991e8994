import { createHash } from 'node:crypto';
import { problemFromInput } from '../problem/problem-from.ts';
import { readJson } from '../problem/read-json.ts';
import { readWith } from '../problem/read-with.ts';
import { BadArchive } from './bad-archive.ts';
import { type ArchiveLine, archiveLine } from './line.ts';
import { lineOrder } from './line-order.ts';
import { splitLines } from './split-lines.ts';

/** A body as JSON text, exactly as a store keeps it. */
export interface Written {
  readonly text: string;
  readonly bytes: number;
}

/** A line, and of a version its body as text. */
export interface ReadLine {
  readonly line: ArchiveLine;
  readonly body?: Written;
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

function parse(bytes: Buffer, number: number): unknown {
  try {
    return JSON.parse(utf8.decode(bytes));
  } catch {
    throw new BadArchive(number, 'is not JSON in UTF-8.');
  }
}

/** @throws {BadArchive} with the reason that reading gives for refusing it */
function asBad<Result>(number: number, read: () => Result): Result {
  try {
    return read();
  } catch (error) {
    const detail = problemFromInput(error)?.detail;
    throw detail === undefined ? error : new BadArchive(number, `${detail}.`);
  }
}

/** Undefined for no value, and for one that is nested too deep to write. */
function textOf(body: unknown): string | undefined {
  try {
    return JSON.stringify(body);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** A body must be what a request could have brought: neither too large, nor too deep, nor with unsafe names. */
function writeBody(body: unknown, mostBytes: number, number: number): Written {
  const text = textOf(body);
  if (text === undefined) throw new BadArchive(number, 'holds no body, or one that is nested too deep.');
  const bytes = Buffer.from(text);
  if (bytes.length > mostBytes) throw new BadArchive(number, `holds a body of more than ${mostBytes} bytes.`);
  asBad(number, () => readJson(bytes));
  return { text, bytes: bytes.length };
}

/**
 * Reads an archive line by line, and holds every line to its form, its place and its neighbours, and the whole to
 * the count and the hash at its end.
 * @param mostBodyBytes of one body
 * @throws {BadArchive}
 */
export async function* readArchive(
  chunks: AsyncIterable<Uint8Array>,
  mostBodyBytes: number,
): AsyncGenerator<ReadLine> {
  const hash = createHash('sha256');
  const faultOf = lineOrder();
  let number = 0;
  let isWhole = false;
  for await (const bytes of splitLines(chunks)) {
    number++;
    const value = parse(bytes, number);
    const line = asBad(number, () => readWith(archiveLine, value));
    const fault = faultOf(line);
    if (fault !== undefined) throw new BadArchive(number, fault);
    if (line.line === 'end') {
      if (line.lines !== number - 1)
        throw new BadArchive(number, `${line.lines} lines should stand before it.`);
      if (line.sha256 !== hash.digest('hex'))
        throw new BadArchive(number, 'the file was changed: its hash differs.');
      isWhole = true;
    } else {
      hash.update(bytes).update('\n');
    }
    const body = line.line === 'version' ? { body: writeBody(line.body, mostBodyBytes, number) } : {};
    yield { line, ...body };
  }
  if (!isWhole) throw new BadArchive(number + 1, 'is missing: the file has no end.');
}
