import { type Contract, isObject, type Json, type JsonObject, mapValues, objectAt } from './json.ts';
import { mapOperations } from './map-operations.ts';

/** What the generator writes where a route says nothing. */
const unsaid = 'Default Response';

function described(response: Json, operation: JsonObject): Json {
  if (!isObject(response) || response.description !== unsaid || operation.summary === undefined)
    return response;
  return { ...response, description: `${operation.summary}.` };
}

/** The document in which a reply without a description has its operation's summary. */
export const describeReplies = (document: Contract): Contract =>
  mapOperations(document, (operation) => ({
    ...operation,
    responses: mapValues(objectAt(operation, 'responses'), (response) => described(response, operation)),
  }));
