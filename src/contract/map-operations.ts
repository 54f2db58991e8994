import { type Contract, isObject, type JsonObject, mapValues, objectAt } from './json.ts';

/** The document with every operation changed. */
export function mapOperations(document: Contract, change: (operation: JsonObject) => JsonObject): Contract {
  const paths = mapValues(objectAt(document, 'paths'), (item) =>
    isObject(item)
      ? mapValues(item, (operation) => (isObject(operation) ? change(operation) : operation))
      : item,
  );
  return { ...document, paths };
}
