import { describe, expect, test } from 'vitest';
import { noneMatchFails } from '../../../src/plugins/entity-tags.ts';
import { expectProblem } from '../expect-problem.ts';
import { buildProbed, goodProbe } from '../probe-app.ts';

// RFC 9110 section 8.8.3.2, the column "weak comparison"; from memory
test.each([
  ['W/"1"', 'W/"1"', true],
  ['W/"1"', 'W/"2"', false],
  ['W/"1"', '"1"', true],
  ['"1"', '"1"', true],
])('If-None-Match %s against %s: %s', (header, tag, match) => {
  expect(noneMatchFails(header, tag)).toBe(match);
});

test.each([
  [undefined, false],
  ['*', true],
  ['"a", "b", "1"', true],
  ['"a","b"', false],
  ['1', false],
  ['', false],
])('If-None-Match %s against "1": %s', (header, match) => {
  expect(noneMatchFails(header, '"1"')).toBe(match);
});

describe('entity tags over HTTP', () => {
  test('GET: a strong tag, then 304 without a body but with the tag', async () => {
    const app = await buildProbed();
    const first = await app.inject('/openapi.json');
    const tag = String(first.headers.etag);
    expect(tag).toMatch(/^"[^"]+"$/);
    const second = await app.inject({
      url: '/openapi.json',
      headers: { 'if-none-match': `"old", W/${tag}` },
    });
    expect(second.statusCode).toBe(304);
    expect(second.body).toBe('');
    expect(second.headers.etag).toBe(tag);
    expect(second.headers['content-type']).toBeUndefined();
    expect(second.headers['content-length']).toBeUndefined();
  });

  test('HEAD: 304 as for GET', async () => {
    const app = await buildProbed();
    const headers = { 'if-none-match': '*' };
    expect((await app.inject({ method: 'HEAD', url: '/openapi.json', headers })).statusCode).toBe(304);
  });

  test('POST: the same bytes have the same tag, and a match is 412, never 304', async () => {
    const app = await buildProbed();
    const send = (headers: Record<string, string> = {}) =>
      app.inject({ method: 'POST', url: '/probe', payload: goodProbe, headers });
    const tag = String((await send()).headers.etag);
    expect((await send()).headers.etag).toBe(tag);
    expect((await send({ 'if-none-match': '"other"' })).statusCode).toBe(200);
    expectProblem(await send({ 'if-none-match': tag }), 412);
  });
});
