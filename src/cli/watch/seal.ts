import { createHash } from 'node:crypto';

/*
 * How hemfold knows its own files again: each carries a digest of the rest of itself. A person's file has none, and a
 * file of hemfold's that a person changed no longer fits its own; both are left alone. Nothing else is remembered, so
 * a folder can be copied, restored or moved to another machine.
 */

/** What a drawing tells about itself. */
export interface DrawingSeal {
  /** Digest of the spec that was drawn. */
  readonly spec: string;
}

/** The first half of SHA-256, as 32 hexadecimal digits: it tells slips apart, not forgers. */
export const digestOf = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest('hex').slice(0, 32);

const afterDeclaration = (svg: string): number => svg.indexOf('\n') + 1;

/** The drawing with its seal as a comment on the second line; XML allows one there, and nothing is drawn by it. */
export function sealDrawing(svg: string, spec: string): string {
  const at = afterDeclaration(svg);
  const words = `hemfold watch drew this: spec ${spec}, drawing ${digestOf(svg)}. Change the file and hemfold leaves it alone.`;
  return `${svg.slice(0, at)}<!-- ${words} -->\n${svg.slice(at)}`;
}

const drawingSeal = /<!-- hemfold watch drew this: spec ([\da-f]{32}), drawing ([\da-f]{32})\..*-->\n/uy;

/** The seal of a drawing that is hemfold's and unchanged; undefined for any other text. */
export function readDrawingSeal(text: string): DrawingSeal | undefined {
  const at = afterDeclaration(text);
  drawingSeal.lastIndex = at;
  const found = drawingSeal.exec(text);
  if (!found) return undefined;
  const [line, spec = '', drawing] = found;
  const svg = text.slice(0, at) + text.slice(at + line.length);
  return digestOf(svg) === drawing ? { spec } : undefined;
}

/** A problem text with its seal as the last line. */
export const sealProblem = (text: string): string =>
  `${text}\nhemfold watch wrote this text (seal ${digestOf(text)}) and takes it away once there is a drawing.\n`;

const problemSeal = /\nhemfold watch wrote this text \(seal ([\da-f]{32})\).*\n$/u;

/** The seal of a problem text that is hemfold's and unchanged; undefined for any other text. */
export function readProblemSeal(text: string): string | undefined {
  const found = problemSeal.exec(text);
  return found && digestOf(text.slice(0, found.index)) === found[1] ? found[1] : undefined;
}
