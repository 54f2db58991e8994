/** The address of a PostgreSQL database. It holds a password, so nothing that prints or logs it shows its text. */
export class DatabaseUrl {
  readonly #text: string;
  private constructor(text: string) {
    this.#text = text;
  }

  /** Undefined for a text that is no such address. */
  static parse(text: string): DatabaseUrl | undefined {
    const url = URL.parse(text);
    const isPostgres = url?.protocol === 'postgresql:' || url?.protocol === 'postgres:';
    return isPostgres && text.slice(url.protocol.length).startsWith('//') ? new DatabaseUrl(text) : undefined;
  }

  /** The whole address, for the driver alone. */
  reveal(): string {
    return this.#text;
  }

  toJSON(): string {
    return '[hidden]';
  }
}
