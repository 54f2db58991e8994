import { describe, expect, test } from 'vitest';
import { build, buildForExamples } from './build.ts';
import { committedContract, type Document, operationsOf } from './contract-document.ts';
import { missingFrom } from './contract-rules.ts';
import { expectProblem } from './expect-problem.ts';
import { examplesOf, isPart, unlikeContract, validatorFor } from './run-contract-examples.ts';

const text = await committedContract();
const contract: Document = JSON.parse(text);
const places = operationsOf(contract);

/** A copy of the document with the value at a place replaced; undefined takes it out. */
function broken(path: readonly string[], value: unknown): Document {
  const copy = JSON.parse(text);
  const last = path.at(-1) ?? '';
  const holder = path.slice(0, -1).reduce((at, name) => at[name], copy);
  if (holder[last] === undefined) throw new Error(`there is nothing at ${path.join(' ')}`);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return copy;
}

describe('every operation', () => {
  test('has its names, a known tag, an example, a shown reply, and its error replies', () => {
    expect(places.length).toBeGreaterThan(10);
    expect(missingFrom(contract)).toEqual([]);
  });

  const plan = ['paths', '/v1/folders/plan', 'post'];
  test.each([
    [[...plan, 'operationId'], undefined, 'no operationId'],
    [[...plan, 'summary'], '', 'no summary'],
    [[...plan, 'tags'], ['sundries'], 'no known tag'],
    [[...plan, 'requestBody', 'content', 'application/json', 'examples'], undefined, 'no example'],
    [[...plan, 'responses', '413'], undefined, 'no reply 413'],
    [[...plan, 'responses', '422'], undefined, 'no reply 422'],
    [[...plan, 'responses', '503'], undefined, 'no reply 503'],
  ])('the check sees what is missing: %s', (path, value, fault) => {
    expect(missingFrom(broken(path, value))).toEqual([`POST /v1/folders/plan: ${fault}`]);
  });

  test('the check sees that a GET without an example has none', () => {
    const path = [
      'paths',
      '/v1/styles',
      'get',
      'responses',
      '200',
      'content',
      'application/json',
      'examples',
    ];
    expect(missingFrom(broken(path, undefined))).toEqual([
      'GET /v1/styles: no example',
      'GET /v1/styles: no reply is shown',
    ]);
  });
});

describe('every example', () => {
  test('is answered with the status, the schema and the value that the document shows', async () => {
    const all = places.flatMap(examplesOf);
    expect(all.length).toBeGreaterThan(20);
    expect(all.filter(({ status }) => status === '422').length).toBeGreaterThan(1);
    const { app, ...as } = await buildForExamples();
    expect(await unlikeContract(app, contract, as)).toEqual([]);
  });

  const plan = ['paths', '/v1/folders/plan', 'post'];
  const request = [
    ...plan,
    'requestBody',
    'content',
    'application/json',
    'examples',
    'known-by-heart',
    'value',
  ];
  const shown = [...plan, 'responses', '200', 'content', 'application/json'];
  const refused = [...plan, 'responses', '422', 'content', 'application/problem+json'];
  test.each([
    ['a request of another folder', [...request, 'dimensions', 'spine'], '3/8 in', /shows another reply/],
    ['a request that cannot be folded', [...request, 'stock', 'width'], '5 in', /answers 422, not 200/],
    ['a request that its schema refuses', [...request, 'style'], 'flat', /the schema refuses the request/],
    ['another shown value', [...shown, 'examples', 'known-by-heart', 'value', 'style'], 'x', /another reply/],
    [
      'a shown reply that says less',
      [...shown, 'examples', 'known-by-heart', 'value', 'blank'],
      undefined,
      /another/,
    ],
    [
      'a shown refusal that says less',
      [...refused, 'examples', 'sheet-too-small', 'value', 'bound'],
      undefined,
      /anoth/,
    ],
    [
      'another schema',
      [...shown, 'schema', '$ref'],
      '#/components/schemas/Health',
      /the schema refuses the reply/,
    ],
    [
      'a component that wants more',
      ['components', 'schemas', 'Plan', 'required'],
      ['tea'],
      /refuses the reply/,
    ],
  ])('the check sees %s', async (_, path, value, fault) => {
    const { paths, ...rest } = broken(path, value);
    const onlyPlan = { '/v1/folders/plan': paths['/v1/folders/plan'] ?? {} };
    const faults = await unlikeContract(await build(), { ...rest, paths: onlyPlan });
    expect(faults.join('\n')).toMatch(fault);
  });

  test('an excerpt has the same members, and of each list the same beginning', () => {
    const whole = { a: [1, [2, 3]], b: { c: null } };
    expect(isPart(whole, whole)).toBe(true);
    expect(isPart({ a: [1], b: { c: null } }, whole)).toBe(true);
    for (const other of [
      { a: [1] },
      { a: [[2, 3]], b: { c: null } },
      { a: [1], b: { c: 0 } },
      { a: {}, b: {} },
      [],
    ])
      expect(isPart(other, whole), JSON.stringify(other)).toBe(false);
  });
});

describe('every error reply that the document names', () => {
  const documenting = (status: string) =>
    places
      .filter(({ operation }) => operation.responses[status])
      .flatMap((place) =>
        examplesOf(place)
          .slice(0, 1)
          .map((example) => ({ ...place, ...example })),
      );
  const withBody = (status: string) =>
    documenting(status).filter(({ operation }) => operation.requestBody?.content['application/json']);
  const json = { 'content-type': 'application/json' };
  const typeOf = ({ mediaType }: { readonly mediaType?: string }): Readonly<Record<string, string>> =>
    mediaType === undefined ? {} : { 'content-type': mediaType };

  /** Holds a reply to RFC 9457 and to what the document says of it. */
  function expectDocumented(
    place: ReturnType<typeof documenting>[number],
    reply: Parameters<typeof expectProblem>[0],
    status: number,
  ) {
    const problem = expectProblem(reply, status);
    const schema = place.operation.responses[status]?.content?.['application/problem+json']?.schema;
    expect(validatorFor(schema ?? { not: {} }, contract)(problem), place.path).toBe(true);
  }

  test('400: a body that is no JSON, a member that is not known', async () => {
    const app = await build();
    expect(withBody('400').length).toBeGreaterThan(5);
    for (const place of withBody('400'))
      for (const payload of ['{', '{"tide":"low"}'])
        expectDocumented(
          place,
          await app.inject({ method: place.method, url: place.url, headers: json, payload }),
          400,
        );
  });

  test('400: a parameter that is not known', async () => {
    const { app, headers } = await buildForExamples();
    const withParameters = documenting('400').filter(({ operation }) => operation.parameters);
    expect(withParameters.length).toBeGreaterThan(20);
    for (const place of withParameters) {
      const url = `${place.url}${place.url.includes('?') ? '&' : '?'}tide=low`;
      const payload = place.body as object | undefined;
      const reply = await app.inject({
        method: place.method,
        url,
        headers: { ...headers, ...typeOf(place) },
        ...(payload ? { payload } : {}),
      });
      expectDocumented(place, reply, 400);
    }
  });

  test('412: the reply is the one that If-None-Match names, or what If-Match names is not there', async () => {
    const { app, headers, reset } = await buildForExamples();
    expect(documenting('412').length).toBeGreaterThan(8);
    for (const place of documenting('412')) {
      const precondition = place.method === 'POST' ? { 'if-none-match': '*' } : { 'if-match': '"99"' };
      const reply = await app.inject({
        method: place.method,
        url: place.url,
        headers: { ...headers, ...typeOf(place), ...precondition },
        ...(place.body === undefined ? {} : { payload: JSON.stringify(place.body) }),
      });
      expectDocumented(place, reply, 412);
      await reset();
    }
  });

  test('413: a body that is too large', async () => {
    const app = await build();
    const payload = JSON.stringify({ tide: 'low'.repeat(100_000) });
    for (const place of withBody('413'))
      expectDocumented(
        place,
        await app.inject({ method: place.method, url: place.url, headers: json, payload }),
        413,
      );
  });

  test('415: a body of another media type', async () => {
    const app = await build();
    const headers = { 'content-type': 'text/plain' };
    for (const place of documenting('415'))
      expectDocumented(
        place,
        await app.inject({ method: place.method, url: place.url, headers, payload: 'tide' }),
        415,
      );
  });

  test('429: one request too many; /health says so for what may stand before it', async () => {
    const app = await build({ RATE_LIMIT: '1' });
    await app.inject('/openapi.json');
    const counted = documenting('429').filter(({ path }) => path !== '/health');
    expect(counted.length).toBeGreaterThan(8);
    for (const place of counted)
      expectDocumented(place, await app.inject({ method: place.method, url: place.url }), 429);
  });

  test('503: too busy', async () => {
    const app = await build({}, { refuseUnderPressure: true, mostHeapBytes: 1 });
    await expect.poll(async () => (await app.inject('/health')).statusCode, { timeout: 5_000 }).toBe(503);
    for (const place of documenting('503'))
      expectDocumented(place, await app.inject({ method: place.method, url: place.url }), 503);
  });
});

test('the document stays small enough to read: 1 MB', () => {
  expect(Buffer.byteLength(text)).toBeLessThan(1_000_000);
});
