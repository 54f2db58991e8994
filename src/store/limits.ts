/** How much one owner may keep. */
export interface Limits {
  /** Things of one kind. */
  readonly items: number;
  /** Bytes of JSON of one kind, with every kept version. */
  readonly bytes: number;
  /** Bytes of JSON of one body. */
  readonly bodyBytes: number;
  /** Share links of one design. */
  readonly shares: number;
}

/** A spec is a few hundred bytes, so this is some hundred thousand versions of designs. */
export const defaultLimits: Limits = Object.freeze({
  items: 1000,
  bytes: 64 * 1024 * 1024,
  bodyBytes: 256 * 1024,
  shares: 100,
});
