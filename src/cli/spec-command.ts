/** A choice that a command leaves to its caller besides the spec. */
export interface CommandOption {
  readonly name: string;
  readonly summary: string;
  readonly fallback: string;
}

/** A command that turns one spec into one file. */
export interface SpecCommand {
  readonly name: string;
  /** What the spec describes. */
  readonly takes: 'folder' | 'set';
  readonly summary: string;
  readonly options?: readonly CommandOption[];
  /**
   * @param spec the parsed JSON, not yet checked
   * @param options the text given for each option, not yet checked
   * @returns the text or bytes of the file
   * @throws {InvalidInput | ZodError | CannotBeFolded | HttpProblem} for a spec that is refused
   */
  readonly run: (
    spec: unknown,
    options: Readonly<Record<string, string>>,
  ) => string | Uint8Array | Promise<string | Uint8Array>;
}

/** As commands write JSON. */
export const asJson = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

/** Options from the choices of a query, each with its usual value. */
export const optionsOf = (choices: Readonly<Record<string, readonly [summary: string, fallback: string]>>) =>
  Object.entries(choices).map(([name, [summary, fallback]]): CommandOption => ({ name, summary, fallback }));
