/** What in a spec cannot be drawn, and what to do about it. */
export interface Fault {
  /** The member at fault, from the knockout's own spec. */
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly remedy: string;
}
