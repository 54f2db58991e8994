import { type Contract, isObject, type Json, type JsonObject } from './json.ts';

const byName = (object: JsonObject): JsonObject =>
  Object.fromEntries(Object.entries(object).toSorted(([a], [b]) => (a < b ? -1 : 1)));

const referencePrefix = '#/components/schemas/';

/** The names of the component schemas that a value refers to. */
function references(value: Json): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(references);
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([key, child]) =>
    key === '$ref' && typeof child === 'string' && child.startsWith(referencePrefix)
      ? [child.slice(referencePrefix.length)]
      : references(child),
  );
}

/** The component schemas that are reached from the paths; every registered schema has two, and few are asked for. */
function reached(paths: Json, schemas: JsonObject): ReadonlySet<string> {
  const found = new Set<string>();
  let next = references(paths);
  while (next.length > 0) {
    const fresh = [...new Set(next)].filter((name) => !found.has(name));
    for (const name of fresh) found.add(name);
    next = fresh.flatMap((name) => references(schemas[name] ?? null));
  }
  return found;
}

/** zod marks what the program may not change; in OpenAPI the same word would forbid callers to send it. */
const withoutReadOnly = (key: string, value: unknown) =>
  key === 'readOnly' && value === true ? undefined : value;

/**
 * The document with paths and schemas by name, and without schemas that nothing refers to. The order in which
 * folders are read depends on the file system, so without this the same routes would give different bytes.
 */
export function inOrder(document: object): Contract {
  const plain = JSON.parse(JSON.stringify(document, withoutReadOnly)) as JsonObject;
  const { components, paths, ...rest } = plain;
  const allPaths = isObject(paths) ? paths : {};
  const { schemas, ...others } = isObject(components) ? components : ({} as JsonObject);
  const allSchemas = isObject(schemas) ? schemas : {};
  const used = reached(allPaths, allSchemas);
  const kept = Object.fromEntries(Object.entries(allSchemas).filter(([name]) => used.has(name)));
  return { ...rest, paths: byName(allPaths), components: { ...others, schemas: byName(kept) } };
}
