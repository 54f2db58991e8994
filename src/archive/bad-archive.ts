/** Thrown for a file that is no whole and sound archive; nothing was changed. The message is ready for people. */
export class BadArchive extends Error {
  override readonly name = 'BadArchive';
  /** The line that is at fault, from 1. */
  readonly line: number;
  constructor(line: number, message: string) {
    super(`Line ${line} of the file: ${message}`);
    this.line = line;
  }
}
