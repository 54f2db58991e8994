/** Plain JSON, as a spec is sent. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

export type Spec = { readonly [name: string]: Json };

export const isObject = (value: Json | undefined): value is Spec =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The parts of a JSON Pointer (RFC 6901). */
export const partsOf = (pointer: string): readonly string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

/** What a value has at a pointer, if anything. */
export const valueAt = (value: Json | undefined, pointer: string): Json | undefined =>
  partsOf(pointer).reduce<Json | undefined>((inner, part) => {
    if (Array.isArray(inner)) return (inner as readonly Json[])[Number(part)];
    return isObject(inner) && Object.hasOwn(inner, part) ? inner[part] : undefined;
  }, value);

/**
 * A copy with a value at a pointer, or with nothing there. Objects on the way are made as they are needed, and left out
 * again where nothing is left in them.
 */
export const withValue = (spec: Spec, pointer: string, value: Json | undefined): Spec => {
  const changed = changedAt(spec, partsOf(pointer), value);
  return isObject(changed) ? changed : {};
};

function changedAt(
  here: Json | undefined,
  parts: readonly string[],
  value: Json | undefined,
): Json | undefined {
  const [part, ...rest] = parts;
  if (part === undefined) return value;
  if (Array.isArray(here)) {
    const list = here as readonly Json[];
    return list.flatMap((each, index) => {
      const inner = index === Number(part) ? changedAt(each, rest, value) : each;
      return inner === undefined ? [] : [inner];
    });
  }
  const object = isObject(here) ? here : {};
  const inner = changedAt(object[part], rest, value);
  const others = Object.entries(object).filter(([name]) => name !== part);
  if (inner === undefined) return others.length === 0 ? undefined : Object.fromEntries(others);
  return { ...object, [part]: inner };
}

interface Change {
  readonly op: 'add' | 'remove';
  readonly path: string;
  readonly value?: unknown;
}

/** A copy with the operations of a proposal done, which are JSON Patch (RFC 6902). */
export const withChanges = (spec: Spec, changes: readonly Change[]): Spec =>
  changes.reduce(
    (result, { op, path, value }) => withValue(result, path, op === 'remove' ? undefined : (value as Json)),
    spec,
  );
