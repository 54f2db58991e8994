/**
 * One change to a spec as an operation of JSON Patch (RFC 6902), which a caller can apply to what was sent, so
 * everything above the last part of its path must be there;
 * `settled` is the same value as the read spec holds it.
 */
export interface Change {
  readonly op: 'add' | 'remove';
  /** JSON Pointer (RFC 6901). */
  readonly path: string;
  readonly value?: unknown;
  readonly settled?: unknown;
}

/** Sets a member to a plain value. */
export const set = (path: string, value: unknown): Change => ({ op: 'add', path, value, settled: value });

/** Takes a member out. */
export const remove = (path: string): Change => ({ op: 'remove', path });

/** A copy of a read spec with the changes made; the original stays as it is. */
export function applyChanges<Spec extends object>(spec: Spec, changes: readonly Change[]): Spec {
  return changes.reduce<Spec>((result, change) => applied(result, tokens(change.path), change) as Spec, spec);
}

const tokens = (pointer: string): string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'));

function applied(value: unknown, [token, ...rest]: readonly string[], change: Change): unknown {
  if (token === undefined) return change.settled;
  if (Array.isArray(value)) {
    if (rest.length === 0 && change.op === 'remove')
      return value.filter((_, index) => String(index) !== token);
    return value.map((item, index) => (String(index) === token ? applied(item, rest, change) : item));
  }
  const object = (value ?? {}) as Record<string, unknown>;
  if (rest.length === 0 && change.op === 'remove') {
    return Object.fromEntries(Object.entries(object).filter(([key]) => key !== token));
  }
  return { ...object, [token]: applied(object[token], rest, change) };
}
