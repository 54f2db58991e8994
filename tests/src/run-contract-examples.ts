import { isDeepStrictEqual } from 'node:util';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import type { FastifyInstance } from 'fastify';
import { changesStore } from '../../src/contract/run-examples.ts';
import { type Document, operationsOf, type Parameter, type Place } from './contract-document.ts';

const validators = new WeakMap<object, ValidateFunction>();

/**
 * Reads by a schema of the document, with the document's components; by another author's hand than zod.
 * @param schema as it stands in that very document
 */
export function validatorFor(schema: object, { components }: Document): ValidateFunction {
  const known = validators.get(schema);
  if (known) return known;
  const ajv = new Ajv2020({ strict: false });
  formats.default(ajv);
  ajv.addFormat('base64', true); // an annotation of OpenAPI's
  const validate = ajv.compile({ ...schema, components });
  validators.set(schema, validate);
  return validate;
}

/** A request of the document, and what the document says of its reply. */
export interface ContractExample {
  readonly name: string;
  readonly body?: unknown;
  /** Of the body. */
  readonly mediaType?: string;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  /** A reply that is not shown is the operation's first success. */
  readonly status: string;
  readonly shown?: { readonly mediaType: string; readonly summary: string; readonly value: unknown };
}

/** Where the reply of an example is shown. */
function shownReply({ operation }: Place, name: string) {
  const found = Object.entries(operation.responses).flatMap(([status, { content = {} }]) =>
    Object.entries(content).flatMap(([mediaType, { examples = {} }]) => {
      const example = examples[name];
      return example
        ? [{ status, shown: { mediaType, summary: example.summary ?? '', value: example.value } }]
        : [];
    }),
  );
  return found[0] ?? { status: Object.keys(operation.responses).toSorted()[0] ?? '' };
}

/** The URL of an operation with a value for each parameter that has one. */
export function urlWith(
  { path, operation: { parameters = [] } }: Place,
  giving: (parameter: Parameter) => unknown,
): string {
  const values = parameters.flatMap((parameter) => {
    const value = giving(parameter);
    return value === undefined ? [] : [{ ...parameter, value: String(value) }];
  });
  const filled = values.reduce(
    (url, { name, value }) => url.replace(`{${name}}`, encodeURIComponent(value)),
    path,
  );
  const query = values
    .filter((each) => each.in === 'query')
    .map(({ name, value }) => `${name}=${encodeURIComponent(value)}`);
  return query.length === 0 ? filled : `${filled}?${query.join('&')}`;
}

/** The examples of an operation: those of its body or, without one, of its parameters or of its reply. */
export function examplesOf(place: Place): readonly ContractExample[] {
  const { requestBody, parameters, responses } = place.operation;
  const source = requestBody
    ? Object.values(requestBody.content)[0]
    : (parameters?.find((each) => each.examples) ?? Object.values(responses['200']?.content ?? {})[0]);
  return Object.entries(source?.examples ?? {}).map(([name, { value }]) => ({
    name,
    ...(requestBody ? { body: value, mediaType: Object.keys(requestBody.content)[0] ?? '' } : {}),
    url: urlWith(place, (parameter) => parameter.examples?.[name]?.value),
    headers: Object.fromEntries(
      (parameters ?? []).flatMap((parameter) => {
        const header = parameter.in === 'header' ? parameter.examples?.[name]?.value : undefined;
        return header === undefined ? [] : [[parameter.name, String(header)]];
      }),
    ),
    ...shownReply(place, name),
  }));
}

/** Whether an excerpt is part of the whole: the same members, and of each list the same beginning. */
export function isPart(part: unknown, whole: unknown): boolean {
  if (Array.isArray(part))
    return (
      Array.isArray(whole) && part.length <= whole.length && part.every((item, n) => isPart(item, whole[n]))
    );
  if (typeof part !== 'object' || part === null) return isDeepStrictEqual(part, whole);
  if (typeof whole !== 'object' || whole === null || Array.isArray(whole)) return false;
  const members = Object.entries(whole);
  return (
    members.length === Object.keys(part).length &&
    members.every(([name, value]) => isPart((part as Record<string, unknown>)[name], value))
  );
}

async function faultsOf(
  app: FastifyInstance,
  document: Document,
  place: Place,
  example: ContractExample,
  as: Readonly<Record<string, string>>,
): Promise<readonly string[]> {
  const { method, operation } = place;
  const { body, mediaType: sent, url, headers, shown, status } = example;
  const request = operation.requestBody?.content[sent ?? ''];
  if (request && !validatorFor(request.schema, document)(body)) return ['the schema refuses the request'];

  const reply = await app.inject({
    method,
    url,
    headers: { ...as, ...headers, ...(sent === undefined ? {} : { 'content-type': sent }) },
    ...(body === undefined ? {} : { payload: body as object }),
  });
  if (String(reply.statusCode) !== status) return [`answers ${reply.statusCode}, not ${status}`];
  const contents = operation.responses[status]?.content;
  if (!contents && reply.body === '') return [];
  const [mediaType = ''] = String(reply.headers['content-type']).split(';', 1);
  const documented = contents?.[mediaType];
  if (!documented) return [`answers with ${mediaType}, which is not documented`];

  const value: unknown = /[/+]json$/u.test(mediaType) ? reply.json() : reply.body;
  const validate = validatorFor(documented.schema, document);
  if (!validate(value)) return [`the schema refuses the reply: ${JSON.stringify(validate.errors?.[0])}`];
  if (!shown) return [];
  if (shown.mediaType !== mediaType) return [`shows ${shown.mediaType}, not ${mediaType}`];
  const same = shown.summary.includes('excerpt')
    ? isPart(shown.value, value)
    : isDeepStrictEqual(shown.value, value);
  return same ? [] : ['shows another reply than it gets; if that is right, run: npm run openapi'];
}

/**
 * Runs every example of a document; one line for each that is not answered as the document says.
 * @param as headers that say who asks, and what puts what is stored back to where each example finds it
 */
export async function unlikeContract(
  app: FastifyInstance,
  document: Document,
  {
    headers = {},
    reset = async () => undefined,
  }: { readonly headers?: Readonly<Record<string, string>>; readonly reset?: () => Promise<void> } = {},
): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const place of operationsOf(document))
    for (const example of examplesOf(place)) {
      for (const fault of await faultsOf(app, document, place, example, headers))
        faults.push(`${place.method} ${place.path}, ${example.name}: ${fault}`);
      if (changesStore({ method: place.method, url: place.path })) await reset();
    }
  return faults;
}
