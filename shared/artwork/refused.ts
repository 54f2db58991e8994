/** Thrown inside this folder where artwork cannot be read; {@link readArtwork} turns it into a fault. */
export class Refused extends Error {
  readonly remedy: string;
  constructor(message: string, remedy: string) {
    super(message);
    this.name = 'Refused';
    this.remedy = remedy;
  }
}

/** A text from outside, short and in quotes, for a sentence. */
export const quoted = (text: string): string =>
  JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);
