import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

const measurement = { units: 'mm', length: 220, measured: 217, scores: 10, caliper: 0.3 };
const { style, stock } = firstSpec;

/** Every route that reads a body and takes no query, with a body that it answers. */
const routes: readonly (readonly [url: string, payload: object])[] = [
  ['/v1/folders/plan', firstSpec],
  ['/v1/folders/fold', firstSpec],
  ['/v1/folders/possible', { style, stock }],
  ['/v1/calibration/strip', { length: '220 mm' }],
  ['/v1/calibration/factor', measurement],
];

describe.each(routes)('%s', (url, payload) => {
  test('refuses a query by the names in it', async () => {
    const app = await build();
    const ask = (query: string) => app.inject({ method: 'POST', url: `${url}${query}`, payload });
    expect((await ask('')).statusCode).toBe(200);
    const problem = expectProblem(await ask('?foo=1&view=closed'), 400);
    expect(problem.detail).toMatch(/^The query is not valid: /);
    expect(problem.errors).toEqual(
      ['foo', 'view'].map((name) => ({
        path: `/${name}`,
        message: `"${name}" is not known here`,
        remedy: 'leave it out',
      })),
    );
  });
});

test('no other route that reads a body ignores a query', async () => {
  const app = await build();
  const { paths } = app.contract();
  // those that the first spec does not fit are looked at in the tests of the contract
  const posts = Object.entries(paths as Record<string, { post?: unknown }>).flatMap(([url, item]) =>
    item.post && !url.includes('{') && url !== '/v1/restore' && !url.startsWith('/v1/sets/') ? [url] : [],
  );
  expect(posts.length).toBeGreaterThan(routes.length);
  const bodies = new Map(routes);
  for (const url of posts) {
    const payload = bodies.get(url) ?? firstSpec;
    const reply = await app.inject({ method: 'POST', url: `${url}?foo=1`, payload });
    expect(reply.statusCode, url).toBe(400);
    expect(reply.body, url).toContain('"/foo"');
  }
});

test('a drawing is remembered by its spec, and a query does not reach it', async () => {
  const app = await build();
  const ask = (url: string) => app.inject({ method: 'POST', url, payload: firstSpec });
  const first = await ask('/v1/folders/svg');
  const again = await ask('/v1/folders/svg?');
  expect(again.statusCode).toBe(200);
  expect(again.headers.etag).toBe(first.headers.etag);
  expectProblem(await ask('/v1/folders/svg?foo=1'), 400);
  expectProblem(await ask('/v1/folders/svg?foo=1'), 400);
});
