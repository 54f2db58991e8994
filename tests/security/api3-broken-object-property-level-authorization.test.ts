/*
 * OWASP API Security Top 10 (2023), API3: nobody sets a member of an object that is not theirs to set, and no reply
 * tells one that is not theirs to know.
 */
import { describe, expect, test } from 'vitest';
import { hashOf } from '../../src/store/secret-hash.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { buildGroup } from '../src/group.ts';
import { type Route, requestFor, routesOf } from './routes-of.ts';
import { cutter } from './things.ts';

describe('what cannot be set', () => {
  test.each<readonly [string, string, object, readonly string[]]>([
    ['PUT', '/v1/members/Bo', {}, ['id', 'name', 'created', 'scopes', 'admin', 'owner']],
    [
      'POST',
      '/v1/members/Keeper/tokens',
      { scopes: ['read'] },
      ['id', 'token', 'secretHash', 'member', 'created', 'revoked', 'lastUsed'],
    ],
    ['PUT', '/v1/cutters/attic', cutter, ['owner', 'version', 'created', 'kind']],
    ['PUT', '/v1/conventions/mine', {}, ['owner', 'version', 'created', 'kind']],
    ['PUT', '/v1/stock/blue', { size: 'craft-12x12' }, ['owner', 'version', 'changed', 'kind']],
  ])('%s %s refuses by name what is not its caller’s to set', async (method, url, body, names) => {
    const { keeper } = await buildGroup();
    for (const name of names) {
      const problem = expectProblem(
        await keeper.ask(method as 'PUT' | 'POST', url, { ...body, [name]: 'x' }),
        400,
      );
      expect(
        problem.errors.map(({ path }) => path),
        name,
      ).toContain(`/${name}`);
    }
  });

  test('the name that is sent is the one in the URL, and the owner is who asks', async () => {
    const { app, member } = await buildGroup();
    const bo = await member('Bo');
    expectProblem(await bo.ask('PUT', '/v1/cutters/attic?owner=home', cutter), 400);
    expect((await bo.ask('PUT', '/v1/cutters/attic', cutter)).statusCode).toBe(201);
    expect((await app.store.list('home', 'cutters', { limit: 9 })).items).toEqual([]);
  });

  test('a name that would reach an object’s prototype is refused', async () => {
    const { app, keeper } = await buildGroup();
    const reply = await app.inject({
      method: 'PUT',
      url: '/v1/members/Bo',
      headers: { authorization: `Bearer ${keeper.token.text}`, 'content-type': 'application/json' },
      payload: '{"active":true,"__proto__":{"admin":true}}',
    });
    expect(expectProblem(reply, 400).errors).toEqual([
      { path: '/__proto__', message: 'the name "__proto__" is not allowed', remedy: 'leave it out' },
    ]);
  });
});

describe('what no reply tells', () => {
  /** The one place where hashes go out, to those who keep the group, is the file that brings everything back. */
  const archive: Route = 'GET /v1/export';

  test('is a hash of a secret or a secret that was shown before, nor a member’s inner id to that member', async () => {
    const { app, keeper, member } = await buildGroup();
    const bo = await member('Bo');
    await bo.ask('PUT', '/v1/cutters/attic', cutter);
    const id = (await app.members.read('Bo'))?.id ?? 'none';
    const secret = bo.token.text.slice(-43);
    const routes = routesOf(app).filter((route) => route.startsWith('GET ') && route !== archive);
    const told: string[] = [];
    for (const route of routes)
      for (const { ask } of [keeper, bo]) {
        const url = requestFor(route).url.replace('/members/thing', '/members/Bo');
        const { statusCode, body } = await ask('GET', url);
        if (statusCode === 200) told.push(route);
        expect(body, route).not.toContain(secret);
        expect(body, route).not.toContain(hashOf(secret));
        // the contract shows an invented archive
        if (!/openapi|docs/.test(route)) expect(body, route).not.toMatch(/secret_?hash"/i);
        if (ask === bo.ask) expect(body, route).not.toContain(id);
      }
    expect(told).toEqual(
      expect.arrayContaining(['GET /v1/me', 'GET /v1/members/{member}/tokens', 'GET /v1/audit']),
    );
    expect((await keeper.ask('GET', '/v1/export')).body, 'the check sees a hash').toContain(hashOf(secret));
  });

  test('is a member of a list, of a thing or of a token that its schema does not have', async () => {
    const { keeper, member } = await buildGroup();
    await member('Bo');
    const [entry] = (await keeper.ask('GET', '/v1/members')).json().items;
    expect(Object.keys(entry)).toEqual(['name', 'active', 'created']);
    const [token] = (await keeper.ask('GET', '/v1/members/Bo/tokens')).json().items;
    expect(Object.keys(token).toSorted()).toEqual(['created', 'current', 'id', 'scopes']);
  });
});
