/** Something that a maker should know before cutting; the folder can be made all the same. */
export interface Warning {
  readonly code: string;
  /** JSON Pointer into the spec. */
  readonly path: string;
  readonly message: string;
  readonly remedy?: string;
}
