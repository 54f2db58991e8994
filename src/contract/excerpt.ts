import { isObject, type Json, mapValues } from './json.ts';

/** Pairs and triples stay whole, and with them every tuple of the schemas. */
const longestKept = 4;

const kept = 3;

/** The value with every list of more than four entries cut to its first three, at any depth. */
export function excerpt(value: Json): Json {
  if (Array.isArray(value)) return (value.length > longestKept ? value.slice(0, kept) : value).map(excerpt);
  return isObject(value) ? mapValues(value, excerpt) : value;
}
