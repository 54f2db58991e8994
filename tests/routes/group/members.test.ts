import { describe, expect, test } from 'vitest';
import { build } from '../../src/build.ts';
import { expectProblem } from '../../src/expect-problem.ts';
import { asking, buildGroup } from '../../src/group.ts';

describe('/v1/members', () => {
  test('PUT adds a member once, suspends and resumes; GET reads; DELETE removes', async () => {
    const { keeper } = await buildGroup();
    const put = await keeper.ask('PUT', '/v1/members/B%C3%A9a%20Lund', {});
    expect(put.statusCode).toBe(201);
    expect(put.headers.location).toBe('/v1/members/B%C3%A9a%20Lund');
    expect(put.json()).toEqual({ name: 'Béa Lund', active: true, created: expect.any(String) });
    const again = await keeper.ask('PUT', '/v1/members/B%C3%A9a%20Lund', { active: true });
    expect([again.statusCode, again.json()]).toEqual([200, put.json()]);
    const suspended = await keeper.ask('PUT', '/v1/members/B%C3%A9a%20Lund', { active: false });
    expect(suspended.json()).toEqual({ ...put.json(), active: false });
    expect((await keeper.ask('GET', '/v1/members/B%C3%A9a%20Lund')).json()).toEqual(suspended.json());
    const removed = await keeper.ask('DELETE', '/v1/members/B%C3%A9a%20Lund');
    expect([removed.statusCode, removed.body]).toEqual([204, '']);
    expectProblem(await keeper.ask('DELETE', '/v1/members/B%C3%A9a%20Lund'), 404);
    expectProblem(await keeper.ask('GET', '/v1/members/B%C3%A9a%20Lund'), 404);
  });

  test('lists members by name, in pages', async () => {
    const { keeper, member } = await buildGroup();
    for (const name of ['Ada', 'Bo', 'Zoe']) await member(name);
    const first = (await keeper.ask('GET', '/v1/members?limit=3')).json();
    expect(first.items.map(({ name }: { name: string }) => name)).toEqual(['Ada', 'Bo', 'Keeper']);
    const rest = (await keeper.ask('GET', `/v1/members?limit=3&after=${first.next}`)).json();
    expect(rest).toEqual({ items: [{ name: 'Zoe', active: true, created: expect.any(String) }] });
  });

  test('keeps its last admin: 409', async () => {
    const { keeper } = await buildGroup();
    for (const reply of [
      await keeper.ask('DELETE', '/v1/members/Keeper'),
      await keeper.ask('PUT', '/v1/members/Keeper', { active: false }),
      await keeper.ask('DELETE', `/v1/members/Keeper/tokens/${keeper.token.id}`),
    ])
      expect(expectProblem(reply, 409).errors[0]?.remedy).toContain('give another member such a token first');
    expect((await keeper.ask('GET', '/v1/me')).statusCode).toBe(200);
  });

  test('of a suspended member takes no token, and takes them again later', async () => {
    const { keeper, member } = await buildGroup();
    const bo = await member('Bo');
    expect((await bo.ask('GET', '/v1/me')).statusCode).toBe(200);
    await keeper.ask('PUT', '/v1/members/Bo', { active: false });
    expectProblem(await bo.ask('GET', '/v1/me'), 401);
    await keeper.ask('PUT', '/v1/members/Bo', { active: true });
    expect((await bo.ask('GET', '/v1/me')).statusCode).toBe(200);
  });

  test.each(['/v1/members', '/v1/members/Ada', '/v1/members/Ada/tokens', '/sign-in'])(
    '%s is not there at home, and says why',
    async (url) => {
      const problem = expectProblem(await asking(await build())('GET', url), 404);
      expect(problem.detail).toBe('This service has one user and no members.');
      expect(problem.errors[0]?.remedy).toContain('hemfold members add');
    },
  );
});

describe('/v1/members/{member}/tokens', () => {
  const url = '/v1/members/Bo/tokens';

  test('makes a token, shows it once, lists it without its secret, and revokes it', async () => {
    const { app, member } = await buildGroup();
    const bo = await member('Bo');
    const made = await bo.ask('POST', url, { scopes: ['read'], note: 'the workshop’s laptop' });
    expect(made.statusCode).toBe(201);
    const { token, ...rest } = made.json();
    expect(token).toMatch(/^hemfold_[\da-f]{20}_[\w-]{43}$/);
    expect(rest).toEqual({
      id: expect.stringMatching(/^[\da-f]{20}$/),
      scopes: ['read'],
      created: expect.any(String),
      note: 'the workshop’s laptop',
    });
    expect(made.headers).toMatchObject({ location: `${url}/${rest.id}`, 'cache-control': 'no-store' });
    const list = await bo.ask('GET', url);
    expect(list.json().items).toEqual(
      expect.arrayContaining([
        { ...rest, current: false },
        expect.objectContaining({ id: bo.token.id, current: true }),
      ]),
    );
    expect(list.body).not.toContain(token.slice(-43));
    const asNew = asking(app, { authorization: `bearer ${token}` });
    expect((await asNew('GET', '/v1/me')).json()).toMatchObject({ name: 'Bo', scopes: ['read'] });
    for (const time of ['once', 'again'])
      expect((await bo.ask('DELETE', `${url}/${rest.id}`)).statusCode, time).toBe(204);
    expectProblem(await asNew('GET', '/v1/me'), 401);
  });

  test('is for the member and for those who keep the group', async () => {
    const { keeper, member } = await buildGroup();
    const [bo, ada] = [await member('Bo'), await member('Ada')];
    expect((await keeper.ask('GET', url)).json().items).toHaveLength(1);
    expect((await keeper.ask('POST', url, { scopes: ['read', 'write', 'admin'] })).statusCode).toBe(201);
    expectProblem(await ada.ask('GET', url), 404);
    expectProblem(await ada.ask('POST', url, { scopes: ['read'] }), 404);
    expectProblem(await ada.ask('DELETE', `${url}/${bo.token.id}`), 404);
    expectProblem(await ada.ask('DELETE', `/v1/members/Ada/tokens/${bo.token.id}`), 404);
    expect((await bo.ask('GET', '/v1/me')).statusCode).toBe(200);
  });

  test('makes none that may do more, and revokes none that may', async () => {
    const { app, member } = await buildGroup();
    const bo = await member('Bo');
    const problem = expectProblem(await bo.ask('POST', url, { scopes: ['read', 'admin'] }), 403);
    expect(problem.errors[0]).toMatchObject({ path: '/scopes/1' });
    const writing = (await bo.ask('POST', url, { scopes: ['write'] })).json();
    const asWriting = asking(app, { authorization: `Bearer ${writing.token}` });
    expectProblem(await asWriting('DELETE', `${url}/${bo.token.id}`), 403);
    expectProblem(await asWriting('POST', url, { scopes: ['read'] }), 403);
    expect((await bo.ask('DELETE', `${url}/${writing.id}`)).statusCode).toBe(204);
  });

  test('makes none that outlasts the one at hand, also for others', async () => {
    const expires = '2030-01-01T00:00:00.000Z';
    const { member } = await buildGroup();
    const bo = await member('Bo', { expires });
    expect((await bo.ask('POST', url, { scopes: ['read'] })).json().expires, 'as that one').toBe(expires);
    const sooner = '2029-12-31T23:00:00.000+01:00';
    expect((await bo.ask('POST', url, { scopes: ['read'], expires: sooner })).json().expires).toBe(
      '2029-12-31T22:00:00.000Z',
    );
    const later = { scopes: ['read'], expires: '2030-01-01T00:00:00.001Z' };
    expect(expectProblem(await bo.ask('POST', url, later), 403).errors[0]?.path).toBe('/expires');
    const brief = await member('Brief', { scopes: ['read', 'write', 'admin'], expires });
    expectProblem(await brief.ask('POST', url, later), 403);
    expect((await brief.ask('POST', url, { scopes: ['read'] })).json().expires).toBe(expires);
  });

  test.each([
    [{}, '/scopes'],
    [{ scopes: [] }, '/scopes'],
    [{ scopes: ['root'] }, '/scopes/0'],
    [{ scopes: ['read', 'read'] }, '/scopes'],
    [{ scopes: ['read'], expires: 'soon' }, '/expires'],
    [{ scopes: ['read'], expires: '2020-01-01T00:00:00Z' }, '/expires'],
    [{ scopes: ['read'], expires: '9999-12-31T23:59:59-12:00' }, '/expires'],
    [{ scopes: ['read'], note: '' }, '/note'],
    [{ scopes: ['read'], note: 'a\nb' }, '/note'],
    [{ scopes: ['read'], note: 'x'.repeat(201) }, '/note'],
    [{ scopes: ['read'], secretHash: 'a'.repeat(64) }, '/secretHash'],
  ])('refuses %j', async (body, path) => {
    const { member } = await buildGroup();
    const bo = await member('Bo');
    expect(expectProblem(await bo.ask('POST', url, body), 400).errors[0]?.path).toBe(path);
    expect((await bo.ask('GET', url)).json().items).toHaveLength(1);
  });

  test('says how full it is', async () => {
    const { keeper, app } = await buildGroup();
    await keeper.ask('PUT', '/v1/members/Bo', {});
    for (let n = 0; n < 100; n++) await app.members.makeToken({ name: 'test' }, 'Bo', { scopes: ['read'] });
    const problem = expectProblem(await keeper.ask('POST', url, { scopes: ['read'] }), 409);
    expect(problem.errors[0]?.remedy).toBe('revoke tokens that are no longer used');
    const first = (await keeper.ask('GET', `${url}?limit=60`)).json();
    const rest = (await keeper.ask('GET', `${url}?limit=60&after=${first.next}`)).json();
    expect([first.items.length, rest.items.length, rest.next]).toEqual([60, 40, undefined]);
  });
});

describe('/v1/me', () => {
  test('says who asks', async () => {
    const { member, keeper } = await buildGroup();
    const bo = await member('Bo', { expires: '2030-01-01T00:00:00.000Z' });
    expect((await keeper.ask('GET', '/v1/me')).json()).toEqual({
      mode: 'group',
      name: 'Keeper',
      scopes: ['read', 'write', 'admin'],
      signedInBy: 'token',
    });
    expect((await bo.ask('GET', '/v1/me')).json()).toEqual({
      mode: 'group',
      name: 'Bo',
      scopes: ['read', 'write'],
      signedInBy: 'token',
      expires: '2030-01-01T00:00:00.000Z',
    });
  });

  test('is the one user at home', async () => {
    expect((await asking(await build())('GET', '/v1/me')).json()).toEqual({
      mode: 'home',
      name: 'home',
      scopes: ['read', 'write', 'admin'],
    });
  });
});

describe('/v1/audit', () => {
  test('says what was done, newest first, in pages', async () => {
    const { keeper } = await buildGroup();
    await keeper.ask('PUT', '/v1/members/Bo', {});
    await keeper.ask('DELETE', '/v1/members/Bo');
    const first = (await keeper.ask('GET', '/v1/audit?limit=2')).json();
    expect(first).toEqual({
      items: [
        expect.objectContaining({ number: 4, actor: 'Keeper', act: 'member-removed', target: 'Bo' }),
        expect.objectContaining({ number: 3, actorId: expect.any(String), act: 'member-added' }),
      ],
      next: 3,
    });
    const rest = (await keeper.ask('GET', '/v1/audit?before=3')).json();
    expect(rest.items.map(({ actor, act }: Record<string, string>) => [actor, act])).toEqual([
      ['command line', 'token-made'],
      ['command line', 'member-added'],
    ]);
    expect(rest.next).toBeUndefined();
  });

  test('tells of the command line and of home, too', async () => {
    const app = await build();
    await asking(app)('GET', '/v1/export');
    expect((await asking(app)('GET', '/v1/audit')).json().items).toEqual([
      { number: 1, at: expect.any(String), actor: 'home', act: 'exported' },
    ]);
  });
});
