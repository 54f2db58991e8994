/** Writes a path as a JSON Pointer; `~` and `/` inside a name become `~0` and `~1` (RFC 6901 section 3). */
export const jsonPointer = (path: readonly PropertyKey[]): string =>
  path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
