import type { Example, Examples, Replies, Reply } from './example.ts';
import { type Contract, isObject, type Json, type JsonObject, mapValues, objectAt } from './json.ts';
import { mapOperations } from './map-operations.ts';

type Named = readonly (readonly [name: string, example: JsonObject])[];

const excerptMark = ' (an excerpt: of each long list the first entries)';

/** Requests with a body, as they stand beside its schema. */
const requestExamples = (examples: readonly Example[]): Named =>
  examples.flatMap(({ name, summary, body }) =>
    body === undefined ? [] : [[name, { summary, value: body }]],
  );

/** Values of one parameter, which may be a header. */
const parameterExamples = (examples: readonly Example[], { name: parameter, schema }: JsonObject): Named =>
  examples.flatMap(({ name, summary, parameters, headers }) => {
    const value = parameters?.[String(parameter)] ?? headers?.[String(parameter)];
    const isNumber = isObject(schema) && schema.type === 'integer';
    return value === undefined ? [] : [[name, { summary, value: isNumber ? Number(value) : value }]];
  });

/** Replies with one status and media type. */
const replyExamples = (
  examples: readonly Example[],
  replies: Readonly<Record<string, Reply>>,
  status: string,
  mediaType: string,
): Named =>
  examples.flatMap(({ name, summary, show }) => {
    const reply = replies[name];
    if (show === 'none' || !reply || String(reply.status) !== status || reply.mediaType !== mediaType)
      return [];
    return [[name, { summary: show === 'excerpt' ? summary + excerptMark : summary, value: reply.value }]];
  });

const withNamed = (value: Json, named: Named): Json =>
  isObject(value) && named.length > 0 ? { ...value, examples: Object.fromEntries(named) } : value;

/** Puts examples beside the schema of every media type of a request body or reply. */
const withContent = (holder: Json, namedOf: (mediaType: string) => Named): Json =>
  isObject(holder) && 'content' in holder
    ? {
        ...holder,
        content: mapValues(objectAt(holder, 'content'), (value, mediaType) =>
          withNamed(value, namedOf(mediaType)),
        ),
      }
    : holder;

/** Changes members that are there. */
const changed = (object: JsonObject, changes: Readonly<Record<string, (value: Json) => Json>>): JsonObject =>
  mapValues(object, (value, name) => changes[name]?.(value) ?? value);

const withParameters = (parameters: Json, own: readonly Example[]): Json =>
  Array.isArray(parameters)
    ? parameters.map((each: Json) => (isObject(each) ? withNamed(each, parameterExamples(own, each)) : each))
    : parameters;

function operationWithExamples(operation: JsonObject, examples: Examples, replies: Replies): JsonObject {
  const id = String(operation.operationId);
  const own = examples[id] ?? [];
  const given = replies[id] ?? {};
  return changed(operation, {
    parameters: (parameters) => withParameters(parameters, own),
    requestBody: (body) => withContent(body, () => requestExamples(own)),
    responses: (all) =>
      isObject(all)
        ? mapValues(all, (reply, status) =>
            withContent(reply, (mediaType) => replyExamples(own, given, status, mediaType)),
          )
        : all,
  });
}

/**
 * The document with the examples of each operation, and with what the app answered to them under the same names.
 * An operation without examples stays as it is.
 */
export const withExamples = (document: Contract, examples: Examples, replies: Replies): Contract =>
  mapOperations(document, (operation) => operationWithExamples(operation, examples, replies));
