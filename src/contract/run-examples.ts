import type { FastifyInstance } from 'fastify';
import type { Example, Examples, Replies, Reply } from './example.ts';
import { excerpt } from './excerpt.ts';
import { type Contract, isObject, type Json, objectAt } from './json.ts';

export const methods = ['GET', 'POST', 'PUT', 'DELETE'] as const;

interface Place {
  readonly method: (typeof methods)[number];
  readonly url: string;
}

/** The method of an operation by its member of a path, as in `get`. */
export function methodOf(member: string): Place['method'] {
  const method = methods.find((each) => each.toLowerCase() === member);
  if (!method) throw new Error(`the examples cannot ask for ${member}`);
  return method;
}

/** Where each operation answers, by its id. */
function placesOf(document: Contract): ReadonlyMap<string, Place> {
  const places = Object.entries(objectAt(document, 'paths')).flatMap(([url, item]) =>
    Object.entries(isObject(item) ? item : {}).map(([method, operation]) => {
      const place: Place = { method: methodOf(method), url };
      return [String(isObject(operation) ? operation.operationId : ''), place] as const;
    }),
  );
  return new Map(places);
}

/** The URL with each value at its place in the path or, where the path has none, in the query. */
export function filledUrl(path: string, values: Readonly<Record<string, string>> = {}): string {
  const inPath = (name: string) => path.includes(`{${name}}`);
  const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(values[name] ?? ''));
  const query = new URLSearchParams(Object.entries(values).filter(([name]) => !inPath(name)));
  return query.size === 0 ? filled : `${filled}?${query}`;
}

const payloadOf = ({ body, mediaType }: Example): string =>
  mediaType === undefined ? JSON.stringify(body) : String(body);

type Headers = Readonly<Record<string, string>>;

async function replyTo(
  app: FastifyInstance,
  place: Place,
  example: Example,
  headers: Headers,
): Promise<Reply> {
  const answer = await app.inject({
    method: place.method,
    url: filledUrl(place.url, example.parameters),
    headers: {
      ...headers,
      ...(example.body === undefined ? {} : { 'content-type': example.mediaType ?? 'application/json' }),
      ...example.headers,
    },
    ...(example.body === undefined ? {} : { payload: payloadOf(example) }),
  });
  const [mediaType = ''] = String(answer.headers['content-type'] ?? '').split(';', 1);
  // an empty reply has no media type, and nothing to show
  const value: Json = /[/+]json$/.test(mediaType) ? answer.json() : answer.body;
  return { status: answer.statusCode, mediaType, value: example.show === 'excerpt' ? excerpt(value) : value };
}

/** Whether a request may leave the store changed; specs are posted only to be planned and drawn. */
export const changesStore = ({ method, url }: { readonly method: string; readonly url: string }): boolean =>
  method === 'PUT' ||
  method === 'DELETE' ||
  url === '/v1/export' || // it is noted
  (method === 'POST' && !/^\/v1\/(?:folders|calibration|sets|shared)\//.test(url));

/**
 * What the app answers to every example that shows its reply.
 * @param as headers that say who asks, and what puts stored things back to where each example finds them
 * @throws Error for examples of an operation that the document does not have
 */
export async function runExamples(
  app: FastifyInstance,
  examples: Examples,
  { headers = {}, reset }: { readonly headers?: Headers; readonly reset: () => Promise<void> },
): Promise<Replies> {
  const places = placesOf(app.contract());
  const replies: Record<string, Record<string, Reply>> = {};
  for (const [operationId, own] of Object.entries(examples)) {
    const place = places.get(operationId);
    if (!place) throw new Error(`there are examples of ${operationId}, which is no operation`);
    const answers: Record<string, Reply> = {};
    for (const example of own) {
      if (example.show === 'none') continue;
      answers[example.name] = await replyTo(app, place, example, headers);
      if (changesStore(place)) await reset();
    }
    replies[operationId] = answers;
  }
  return replies;
}
