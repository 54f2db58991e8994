export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export type JsonObject = { readonly [name: string]: Json };

/** An OpenAPI document as plain JSON. */
export type Contract = JsonObject;

export const isObject = (value: Json | undefined): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The object that a member holds; an empty one where it is missing or something else. */
export function objectAt(value: Json | undefined, name: string): JsonObject {
  const member = isObject(value) ? value[name] : undefined;
  return isObject(member) ? member : {};
}

/** A copy with every member changed. */
export const mapValues = (object: JsonObject, change: (value: Json, name: string) => Json): JsonObject =>
  Object.fromEntries(Object.entries(object).map(([name, value]) => [name, change(value, name)]));
