import { type Contract, isObject, type Json, type JsonObject, mapValues, objectAt } from './json.ts';

const mediaType = 'application/json';

const bodySchema = (operation: JsonObject): Json | undefined =>
  objectAt(objectAt(objectAt(operation, 'requestBody'), 'content'), mediaType).schema;

/** An operation whose successful JSON replies have a schema. */
function replyingWith(operation: JsonObject, schema: Json): JsonObject {
  const responses = mapValues(objectAt(operation, 'responses'), (reply, status) => {
    const content = objectAt(reply, 'content');
    if (!status.startsWith('2') || !isObject(reply) || !isObject(content[mediaType])) return reply;
    return { ...reply, content: { ...content, [mediaType]: { ...content[mediaType], schema } } };
  });
  return { ...operation, responses };
}

const isKept = ({ tags }: JsonObject): boolean => Array.isArray(tags) && tags.includes('kept');

function withKept(item: JsonObject): JsonObject {
  const put = objectAt(item, 'put');
  if (!isKept(put)) return item;
  const schema = bodySchema(put);
  if (schema === undefined) return item;
  return mapValues(item, (operation, method) =>
    isObject(operation) && (method === 'get' || method === 'put')
      ? replyingWith(operation, schema)
      : operation,
  );
}

/**
 * The document in which what is put at a URL and what is read there have one schema: a kept thing is given back as
 * it was sent, while the schemas of the routes tell what becomes of it when it is read.
 */
export const withKeptReplies = (document: Contract): Contract => ({
  ...document,
  paths: mapValues(objectAt(document, 'paths'), (item) => (isObject(item) ? withKept(item) : item)),
});
