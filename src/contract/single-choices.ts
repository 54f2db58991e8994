import { type Contract, isObject, type Json, type JsonObject, mapValues } from './json.ts';

/** The only schema of a choice between one; undefined for every other value. */
function onlyChoice(schema: JsonObject): JsonObject | undefined {
  const choices = schema.oneOf;
  const [only, ...others] = Array.isArray(choices) ? (choices as readonly Json[]) : [];
  return others.length === 0 && isObject(only) ? only : undefined;
}

function withoutIn(value: Json): Json {
  if (Array.isArray(value)) return value.map(withoutIn);
  if (!isObject(value)) return value;
  const only = onlyChoice(value);
  if (only === undefined) return mapValues(value, withoutIn);
  const { oneOf: _, ...beside } = value;
  return withoutIn({ ...beside, ...only, ...beside });
}

/**
 * The document without choices between one: `{ oneOf: [A] }` becomes A. A spec is one of the styles' specs, also
 * while there is a single style. What stands beside the choice wins over what stands in it.
 */
export const withoutSingleChoices = (document: Contract): Contract => mapValues(document, withoutIn);
