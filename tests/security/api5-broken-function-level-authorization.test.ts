/*
 * OWASP API Security Top 10 (2023), API5: what only some may do is refused to all others, on every route there is, and
 * on routes that nobody thought of.
 */
import { describe, expect, test } from 'vitest';
import { scopes } from '../../src/members/caller.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { asking, bearer, buildGroup } from '../src/group.ts';
import { needs, pages } from './needs.ts';
import { type Route, requestFor, routesOf } from './routes-of.ts';

type Method = Parameters<ReturnType<typeof asking>>[0];

/** A request without a body; who may not call a route is told so before the body is looked at. */
const askFor = (ask: ReturnType<typeof asking>, route: Route) => {
  const { method, url } = requestFor(route);
  return ask(method as Method, url);
};

const operations = Object.entries(needs) as [Route, (typeof needs)[Route]][];

describe('every route', () => {
  test('is one of those whose needs are written down', async () => {
    const { app } = await buildGroup();
    const known = new Set<string>([...pages, ...Object.keys(needs)]);
    const routes = routesOf(app).filter((route) => !route.startsWith('HEAD '));
    expect(routes.length).toBeGreaterThan(50);
    expect(routes.filter((route) => !known.has(route))).toEqual([]);
  });

  test('answers nobody who is not signed in, but for the few that anybody may call', async () => {
    const { ask } = await buildGroup();
    const open: Route[] = [];
    for (const [route] of operations) if ((await askFor(ask, route)).statusCode !== 401) open.push(route);
    expect(open.toSorted()).toEqual(
      operations.flatMap(([route, need]) => (need === 'nothing' ? [route] : [])).toSorted(),
    );
  });

  test('that is a page is for anybody, so that people can sign in and read what there is', async () => {
    const { ask } = await buildGroup();
    for (const route of pages) expect((await askFor(ask, route)).statusCode, route).not.toBe(401);
  });

  test.each(scopes)('that needs %s answers only a token with that scope', async (scope) => {
    const { member } = await buildGroup();
    const all = await member('All', { scopes });
    const others = scopes.filter((each) => each !== scope);
    const without = await member('Without', { scopes: others });
    const guarded = operations.flatMap(([route, need]) => (need === scope ? [route] : []));
    expect(guarded.length).toBeGreaterThan(4);
    for (const route of guarded) {
      const reply = await askFor(without.ask, route);
      expectProblem(reply, 403);
      expect(reply.headers['www-authenticate'], route).toBe(
        `Bearer realm="hemfold", error="insufficient_scope", scope="${scope}"`,
      );
      if (route === 'GET /v1/export') continue; // would be in the way of nothing but time
      expect((await askFor(all.ask, route)).statusCode, route).not.toBeOneOf([401, 403]);
    }
  });

  test('that says nothing of what it needs is for members alone', async () => {
    const { app, keeper, ask } = await buildGroup(
      {},
      {
        extend: (bare) => {
          bare.get('/forgotten', async () => 'all of it');
          bare.post('/forgotten', async () => 'all of it');
        },
      },
    );
    expectProblem(await ask('GET', '/forgotten'), 401);
    expectProblem(await ask('POST', '/forgotten'), 401);
    expect((await keeper.ask('GET', '/forgotten')).body).toBe('all of it');
    expect(routesOf(app), 'and the first test would see it').toContain('GET /forgotten');
  });
});

describe('no way around', () => {
  test.each(['x-http-method-override', 'x-http-method', 'x-method-override'])(
    '%s changes no method',
    async (header) => {
      const { keeper, member } = await buildGroup();
      await member('Bo');
      await keeper.ask('GET', '/v1/members/Bo', undefined, { [header]: 'DELETE' });
      await keeper.ask(
        'POST',
        '/v1/members/Bo/tokens?_method=DELETE',
        { scopes: ['read'] },
        { [header]: 'DELETE' },
      );
      expect((await keeper.ask('GET', '/v1/members/Bo')).statusCode).toBe(200);
    },
  );

  test.each([
    '/v1/members/',
    '//v1/members',
    '/V1/MEMBERS',
    '/v1//members',
    '/v1/./members',
    '/v1/members?x',
    '/v1/%6Dembers',
  ])('%s tells nothing to who may not see it', async (url) => {
    const { ask, member } = await buildGroup();
    const bo = await member('Bo');
    expect((await ask('GET', url)).statusCode).toBeOneOf([401, 404]);
    expect((await bo.ask('GET', url)).statusCode).toBeOneOf([403, 404]);
  });

  test('a member does not become more than the token says by asking for it', async () => {
    const { app, member } = await buildGroup();
    const bo = await member('Bo', { scopes: ['read', 'write'] });
    expectProblem(await bo.ask('POST', '/v1/members/Bo/tokens', { scopes: ['admin'] }), 403);
    expectProblem(await bo.ask('PUT', '/v1/members/Bo', {}), 403);
    const { token } = (await bo.ask('POST', '/v1/members/Bo/tokens', { scopes: ['write'] })).json();
    const asWriter = asking(app, bearer(token));
    expectProblem(await asWriter('GET', '/v1/me'), 403);
    expectProblem(await asWriter('POST', '/v1/members/Bo/tokens', { scopes: ['read'] }), 403);
  });
});
