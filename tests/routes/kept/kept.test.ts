import type { FastifyInstance } from 'fastify';
import { describe, expect, test } from 'vitest';
import { kinds } from '../../../src/store/store.ts';
import { build } from '../../src/build.ts';
import { expectProblem } from '../../src/expect-problem.ts';

const spec = {
  style: 'twin-sleeve',
  stock: { size: 'craft-12x12', caliper: '0.3 mm' },
  dimensions: { panel: { width: '4 in', height: '5 3/4 in' }, spine: '1/2 in' },
};

/** Two bodies of each kind. */
const bodies = {
  conventions: [{ rootUnit: 'in' }, { rootUnit: 'mm' }],
  cutters: [
    { width: '13 in', height: '24 in' },
    { width: '330 mm', height: '600 mm', margin: '5 mm' },
  ],
  stock: [
    { size: 'craft-12x12', caliper: '0.3 mm', count: 24 },
    { size: 'craft-12x12', caliper: '0.3 mm', count: 22, price: { perSheet: 0.9, currency: 'EUR' } },
  ],
  designs: [
    { title: 'Thank-you folder', spec },
    { title: 'Thank-you folder', notes: 'Fold\nslowly.', credit: 'Thursdays', licence: 'CC-BY-4.0', spec },
  ],
} as const;

const asking =
  (app: FastifyInstance) =>
  (
    method: 'GET' | 'PUT' | 'DELETE' | 'POST',
    url: string,
    payload?: object,
    headers: Record<string, string> = {},
  ) =>
    app.inject({ method, url, headers, ...(payload === undefined ? {} : { payload }) });

describe.each(kinds)('/v1/%s', (kind) => {
  const [first, second] = bodies[kind];
  const url = `/v1/${kind}/lamp%20room%20blue`;

  test('keeps what is put, byte for byte, and gives it back with its version as the tag', async () => {
    const ask = asking(await build());
    const put = await ask('PUT', url, first);
    expect(put.statusCode).toBe(201);
    expect(put.headers.location).toBe(url);
    expect(put.headers.etag).toBe('"1"');
    const read = await ask('GET', url);
    expect(read.statusCode).toBe(200);
    expect(read.body).toBe(JSON.stringify(first));
    expect(read.headers).toMatchObject({
      etag: '"1"',
      'content-type': 'application/json; charset=utf-8',
      'cache-control': 'private, no-cache',
    });
    expect((await ask('GET', url, undefined, { 'if-none-match': '"1"' })).statusCode).toBe(304);
  });

  test('the same put twice is the same as once', async () => {
    const ask = asking(await build());
    await ask('PUT', url, first);
    const again = await ask('PUT', url, first);
    expect([again.statusCode, again.headers.etag]).toEqual([200, '"1"']);
  });

  test('no update is lost: a change made to an older version is refused, and nothing is changed', async () => {
    const ask = asking(await build());
    await ask('PUT', url, first);
    expect((await ask('PUT', url, second, { 'if-match': '"1"' })).headers.etag).toBe('"2"');
    const late = expectProblem(await ask('PUT', url, first, { 'if-match': '"1"' }), 412);
    expect(late.detail).toContain('now at version 2');
    expectProblem(await ask('DELETE', url, undefined, { 'if-match': '"1"' }), 412);
    expect((await ask('GET', url)).json()).toEqual(second);
  });

  test('one of many that put a new name with If-None-Match: * makes it, the others are told', async () => {
    const ask = asking(await build());
    const replies = await Promise.all(
      Array.from({ length: 8 }, () => ask('PUT', url, first, { 'if-none-match': '*' })),
    );
    expect(replies.map(({ statusCode }) => statusCode).toSorted()).toEqual([
      201,
      ...Array.from({ length: 7 }, () => 412),
    ]);
  });

  test('preconditions that cannot be honoured are refused, and a weak tag never matches', async () => {
    const ask = asking(await build());
    await ask('PUT', url, first);
    for (const headers of [
      { 'if-none-match': '"1"' },
      { 'if-match': '"1", "2"' },
      { 'if-match': '"1"', 'if-none-match': '*' },
    ] as Record<string, string>[])
      expectProblem(await ask('PUT', url, second, headers), 400);
    for (const tag of ['W/"1"', '"tide"', '"01x"', '1'])
      expectProblem(await ask('PUT', url, second, { 'if-match': tag }), 412);
    expect((await ask('PUT', url, second, { 'if-match': '*' })).statusCode).toBe(200);
    expectProblem(await ask('PUT', `/v1/${kind}/other`, second, { 'if-match': '*' }), 412);
  });

  test('removes, once', async () => {
    const ask = asking(await build());
    await ask('PUT', url, first);
    const gone = await ask('DELETE', url);
    expect([gone.statusCode, gone.body]).toEqual([204, '']);
    expectProblem(await ask('DELETE', url), 404);
    expectProblem(await ask('GET', url), 404);
  });

  test('lists in pages, each entry once, in the order of names', async () => {
    const ask = asking(await build());
    const names = ['ä', 'b', 'B', '10', '9', 'c c'];
    for (const name of names) await ask('PUT', `/v1/${kind}/${encodeURIComponent(name)}`, first);
    const found: string[] = [];
    for (let after = ''; ; ) {
      const page = (await ask('GET', `/v1/${kind}?limit=2${after}`)).json();
      expect(page.items.length).toBeLessThanOrEqual(2);
      found.push(...page.items.map(({ name }: { name: string }) => name));
      expect(page.items[0].value).toEqual(first);
      if (page.next === undefined) break;
      after = `&after=${encodeURIComponent(page.next)}`;
    }
    expect(found).toEqual(['10', '9', 'B', 'b', 'c c', 'ä']);
    for (const limit of ['0', '101', 'ten', '1.5'])
      expectProblem(await ask('GET', `/v1/${kind}?limit=${limit}`), 400);
  });

  test.each(['..', '%2e', 'a%2Fb', '%20a', 'a%20', 'x'.repeat(81), 'a%00', 'a%0Ab', '%F0%9F%94%A5'])(
    'has no thing called %s',
    async (name) => {
      const ask = asking(await build());
      const { statusCode } = await ask('PUT', `/v1/${kind}/${name}`, first);
      expect([400, 404, 405]).toContain(statusCode);
      expect((await ask('GET', `/v1/${kind}`)).json().items).toEqual([]);
    },
  );

  test('composed and decomposed letters are one name', async () => {
    const ask = asking(await build());
    await ask('PUT', `/v1/${kind}/${encodeURIComponent('blaa\u030A')}`, first);
    expect((await ask('GET', `/v1/${kind}/${encodeURIComponent('bla\u00E5')}`)).statusCode).toBe(200);
  });

  test('refuses members that are not known, and keeps nothing of it', async () => {
    const ask = asking(await build());
    const problem = expectProblem(await ask('PUT', url, { ...first, tide: 'low' }), 400);
    expect(problem.errors[0]?.path).toBe('/tide');
    expectProblem(await ask('GET', url), 404);
  });
});

test('a kept length names its unit', async () => {
  const ask = asking(await build());
  const problem = expectProblem(await ask('PUT', '/v1/cutters/bench', { width: 330, height: '60 cm' }), 400);
  expect(problem.errors).toEqual([
    {
      path: '/width',
      message: 'the length has no unit',
      remedy: 'add one, as in "130 mm" or "5 1/8 in"',
    },
  ]);
});

describe('versions of a design', () => {
  test('every one stays readable until the design is removed', async () => {
    const ask = asking(await build());
    const url = '/v1/designs/thanks';
    for (const title of ['One', 'Two', 'Three']) await ask('PUT', url, { title, spec });
    const { items } = (await ask('GET', `${url}/versions`)).json();
    expect(items.map(({ version }: { version: number }) => version)).toEqual([3, 2, 1]);
    const old = await ask('GET', `${url}/versions/1`);
    expect(old.json().title).toBe('One');
    expect(old.headers.etag).toBe('"1"');
    const page = (await ask('GET', `${url}/versions?limit=2`)).json();
    expect(page.next).toBe(2);
    expect((await ask('GET', `${url}/versions?limit=2&before=2`)).json().items).toHaveLength(1);
    expectProblem(await ask('GET', `${url}/versions/4`), 404);
    expectProblem(await ask('GET', `${url}/versions/0`), 400);
    await ask('DELETE', url);
    expectProblem(await ask('GET', `${url}/versions`), 404);
    expectProblem(await ask('GET', `${url}/versions/1`), 404);
  });
});
