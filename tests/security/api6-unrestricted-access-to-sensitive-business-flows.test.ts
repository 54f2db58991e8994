/*
 * OWASP API Security Top 10 (2023), API6: signing in, handing out links, and bringing back everything are steps that
 * harm when a program repeats them, or a foreign page starts them in somebody's browser.
 */
import { describe, expect, test } from 'vitest';
import { linesOf, sealed } from '../src/archive/archive-text.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { asking, buildGroup, type TestGroup } from '../src/group.ts';
import { setClock } from '../src/members/set-clock.ts';
import { folderSpec as spec } from './things.ts';

const form = { 'content-type': 'application/x-www-form-urlencoded' };
const own = { 'sec-fetch-site': 'same-origin' };

const signIn = ({ app, keeper }: TestGroup, headers: Record<string, string> = own) =>
  app.inject({
    method: 'POST',
    url: '/sign-in',
    headers: { ...form, ...headers },
    payload: new URLSearchParams({ token: keeper.token.text }).toString(),
  });

/** Asks as the browser in which the keeper signed in. */
async function browserOf(group: TestGroup) {
  const cookie = String((await signIn(group)).headers['set-cookie']).split(';', 1)[0] ?? '';
  return asking(group.app, { cookie });
}

describe('signing in', () => {
  test('is done twenty times a minute and address at most', async () => {
    const group = await buildGroup({ RATE_LIMIT: '1000' });
    for (let n = 0; n < 20; n++) expect((await signIn(group)).statusCode).toBe(303);
    expectProblem(await signIn(group), 429);
    expect((await group.keeper.ask('GET', '/v1/me')).statusCode, 'others go on').toBe(200);
  });

  test('keeps the newest twenty browsers of a token, and no more', async () => {
    const group = await buildGroup();
    const browsers = [];
    for (let n = 0; n < 22; n++) browsers.push(await browserOf(group));
    const known = await Promise.all(browsers.map(async (ask) => (await ask('GET', '/v1/me')).statusCode));
    expect(known.filter((status) => status === 200)).toHaveLength(20);
  });

  test.each([
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['a neighbour of this site', { 'sec-fetch-site': 'same-site' }],
    ['another origin', { origin: 'https://elsewhere.example' }],
    ['this host over another scheme', { origin: 'https://localhost:80' }],
    ['nowhere', {}],
  ])(
    'is refused to a page of %s, which could make somebody work under a foreign name',
    async (_name, headers) => {
      const group = await buildGroup();
      const reply = await signIn(group, headers);
      expectProblem(reply, 403);
      expect(reply.headers['set-cookie']).toBeUndefined();
    },
  );
});

describe('what a foreign page starts in a signed-in browser', () => {
  const steps: readonly { method: 'PUT' | 'POST' | 'DELETE'; url: string; body?: object }[] = [
    { method: 'PUT', url: '/v1/cutters/attic', body: { width: '12 in', height: '24 in' } },
    { method: 'DELETE', url: '/v1/cutters/attic' },
    { method: 'POST', url: '/v1/members/Keeper/tokens', body: { scopes: ['read'] } },
    { method: 'PUT', url: '/v1/members/Bo', body: {} },
    { method: 'DELETE', url: '/v1/members/Bo' },
    { method: 'POST', url: '/v1/restore?replace=true' },
    { method: 'POST', url: '/v1/folders/plan', body: spec },
  ];

  test.each(steps)(
    '$method $url is refused, and from a page of this service it is not',
    async ({ method, url, body }) => {
      const group = await buildGroup();
      const ask = await browserOf(group);
      for (const headers of [
        {},
        { 'sec-fetch-site': 'cross-site' },
        { 'sec-fetch-site': 'same-site' },
        { 'sec-fetch-site': 'none' },
        { origin: 'null' },
        { origin: 'http://localhost:80.elsewhere.example' },
      ])
        expectProblem(await ask(method, url, body, headers), 403);
      expect((await group.keeper.ask('GET', '/v1/audit')).json().items[0]?.act).toBe('signed-in');
      for (const headers of [own, { origin: 'http://localhost' }])
        expect((await ask(method, url, body, { host: 'localhost', ...headers })).statusCode).not.toBeOneOf([
          401, 403,
        ]);
    },
  );

  test('makes no token that outlasts the browser’s session', async () => {
    const clock = setClock('2026-11-03T18:00:00.000Z');
    const group = await buildGroup({}, { clock });
    const ask = await browserOf(group);
    const made = await ask('POST', '/v1/members/Keeper/tokens', { scopes: ['read'] }, own);
    expect(made.statusCode).toBe(201);
    expect(made.json().expires).toBe('2026-12-03T18:00:00.000Z');
    const longer = { scopes: ['read'], expires: '2026-12-03T18:00:01.000Z' };
    expectProblem(await ask('POST', '/v1/members/Keeper/tokens', longer, own), 403);
    expect((await group.keeper.ask('POST', '/v1/members/Keeper/tokens', longer)).statusCode).toBe(201);
  });

  test('and signing out, too', async () => {
    const group = await buildGroup();
    const ask = await browserOf(group);
    expectProblem(await ask('POST', '/sign-out', undefined, { 'sec-fetch-site': 'cross-site' }), 403);
    expect((await ask('GET', '/v1/me')).statusCode).toBe(200);
  });
});

describe('links to a design', () => {
  test('are a hundred at most, and each can be revoked', async () => {
    const { keeper, ask } = await buildGroup();
    await keeper.ask('PUT', '/v1/designs/gift', { title: 'Gift', spec });
    const links = [];
    for (let n = 0; n < 100; n++)
      links.push((await keeper.ask('POST', '/v1/designs/gift/shares', {})).json());
    expectProblem(await keeper.ask('POST', '/v1/designs/gift/shares', {}), 409);
    const [first] = links;
    expect((await ask('GET', `/v1/shared/${first.secret}`)).statusCode).toBe(200);
    expect((await keeper.ask('DELETE', `/v1/designs/gift/shares/${first.id}`)).statusCode).toBe(204);
    expectProblem(await ask('GET', `/v1/shared/${first.secret}`), 404);
  });

  test('are guessed no faster than anything else is asked', async () => {
    const { ask } = await buildGroup({ RATE_LIMIT: '5' });
    for (let n = 0; n < 5; n++)
      expectProblem(await ask('GET', `/v1/shared/${`${n}`.padStart(43, 'x')}`), 404);
    expectProblem(await ask('GET', `/v1/shared/${'y'.repeat(43)}`), 429);
  });

  test('give what is in the design, and change nothing', async () => {
    const { keeper, ask } = await buildGroup();
    await keeper.ask('PUT', '/v1/designs/gift', { title: 'Gift', spec });
    const { secret } = (await keeper.ask('POST', '/v1/designs/gift/shares', {})).json();
    for (const method of ['PUT', 'DELETE', 'POST'] as const)
      expectProblem(await ask(method, `/v1/shared/${secret}`, {}), 405);
    expect((await ask('GET', `/v1/shared/${secret}`)).body).not.toMatch(/Keeper|owner/);
  });
});

describe('bringing everything back', () => {
  const restore = ({ app, keeper }: TestGroup, text: string, query: string) =>
    app.inject({
      method: 'POST',
      url: `/v1/restore${query}`,
      headers: { authorization: `Bearer ${keeper.token.text}`, 'content-type': 'application/x-ndjson' },
      payload: text,
    });

  test('is refused where something is kept, unless that is said; runs alone; and is written down', async () => {
    const group = await buildGroup();
    const file = (await group.keeper.ask('GET', '/v1/export')).body;
    expectProblem(await restore(group, file, ''), 409);
    const statuses = await Promise.all(
      [1, 2, 3].map(async () => (await restore(group, file, '?replace=true')).statusCode),
    );
    expect(statuses.toSorted()).toEqual([200, 409, 409]);
    expect((await group.keeper.ask('GET', '/v1/audit')).json().items[0]).toMatchObject({
      act: 'restored',
      actor: 'Keeper',
    });
  });

  test('leaves no group without anybody to keep it', async () => {
    const group = await buildGroup();
    const file = (await group.keeper.ask('GET', '/v1/export')).body;
    const lines = linesOf(file).filter(({ line }) => line === 'archive' || line === 'act');
    expectProblem(await restore(group, sealed(lines), '?replace=true'), 409);
    expect((await group.keeper.ask('GET', '/v1/me')).statusCode).toBe(200);
  });
});
