/*
 * OWASP API Security Top 10 (2023), API4: whatever a caller sends, it takes a bounded amount of time, memory and room.
 */
import { describe, expect, test } from 'vitest';
import { commandLine } from '../../src/members/audit.ts';
import { openRecords } from '../../src/records.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { asking, buildGroup } from '../src/group.ts';
import { tempFolder } from '../src/temp-folder.ts';
import { cutter } from './things.ts';

describe('what is sent', () => {
  test('is bounded in bytes, on every route that reads a body', async () => {
    const { keeper } = await buildGroup();
    const large = { x: 'x'.repeat(257 * 1024) };
    for (const [method, url] of [
      ['POST', '/v1/folders/plan'],
      ['PUT', '/v1/cutters/attic'],
      ['PUT', '/v1/members/Bo'],
      ['POST', '/v1/members/Keeper/tokens'],
    ] as const)
      expectProblem(await keeper.ask(method, url, large), 413);
  });

  test('is bounded in depth and in the number of faults that are told', async () => {
    const { app, keeper } = await buildGroup();
    const put = (payload: string) =>
      app.inject({
        method: 'PUT',
        url: '/v1/cutters/attic',
        headers: { authorization: `Bearer ${keeper.token.text}`, 'content-type': 'application/json' },
        payload,
      });
    for (const depth of [70, 100_000])
      expect(
        expectProblem(await put(`{"a":${'['.repeat(depth)}${']'.repeat(depth)}}`), 400).detail,
      ).toContain('nested more than 64 deep');
    const many = Object.fromEntries(Array.from({ length: 20_000 }, (_, n) => [`m${n}`, 1]));
    expect(expectProblem(await put(JSON.stringify(many)), 400).errors.length).toBeLessThan(40);
  });

  test('is bounded in the length of a URL’s parts and of headers', async () => {
    const { app, keeper } = await buildGroup();
    expectProblem(await keeper.ask('GET', `/v1/cutters/${'x'.repeat(201)}`), 414);
    await app.listen({ host: '127.0.0.1', port: 0 });
    const address = app.server.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const headers = { 'x-large': 'x'.repeat(20_000) };
    const reply = await fetch(`http://127.0.0.1:${port}/health`, { headers });
    expect(reply.status).toBe(431);
  });
});

describe('what is given', () => {
  test.each(['/v1/stock', '/v1/members', '/v1/members/Keeper/tokens', '/v1/audit'])(
    '%s comes in pages of 100 at most',
    async (url) => {
      const { keeper } = await buildGroup();
      for (const limit of ['0', '101', '1000000', '-1', '1.5', 'all'])
        expectProblem(await keeper.ask('GET', `${url}?limit=${limit}`), 400);
      expect((await keeper.ask('GET', `${url}?limit=100`)).statusCode).toBe(200);
    },
  );
});

describe('what is kept', () => {
  test('is bounded for each member', async () => {
    const folder = await tempFolder();
    const clock = () => new Date();
    const records = openRecords({ dataDir: folder, databaseUrl: undefined }, clock, {
      limits: { items: 3 },
      memberLimits: { members: 2, tokens: 2 },
    });
    const { keeper, member } = await buildGroup({ DATA_DIR: folder }, { records });
    for (let n = 0; n < 3; n++)
      expect((await keeper.ask('PUT', `/v1/cutters/c${n}`, cutter)).statusCode).toBe(201);
    expectProblem(await keeper.ask('PUT', '/v1/cutters/c3', cutter), 409);
    const bo = await member('Bo');
    expect((await bo.ask('PUT', '/v1/cutters/c3', cutter)).statusCode, 'each has room').toBe(201);
    expectProblem(await keeper.ask('PUT', '/v1/members/Cyd', {}), 409);
    expect((await bo.ask('POST', '/v1/members/Bo/tokens', { scopes: ['read'] })).statusCode).toBe(201);
    expectProblem(await bo.ask('POST', '/v1/members/Bo/tokens', { scopes: ['read'] }), 409);
  });

  test('has bounds also where nothing is said', async () => {
    const { app, keeper } = await buildGroup();
    await app.members.put(commandLine, 'Bo', { active: true });
    for (let n = 0; n < 100; n++) await app.members.makeToken(commandLine, 'Bo', { scopes: ['read'] });
    expectProblem(await keeper.ask('POST', '/v1/members/Bo/tokens', { scopes: ['read'] }), 409);
  });
});

describe('how often', () => {
  test('is counted for each member, whatever the address, and for each address that is not signed in', async () => {
    const { ask, keeper, member } = await buildGroup({ RATE_LIMIT: '3' });
    const bo = await member('Bo');
    for (let n = 0; n < 3; n++) expect((await bo.ask('GET', '/v1/me')).statusCode).toBe(200);
    const fourth = await bo.ask('GET', '/v1/me');
    expect(expectProblem(fourth, 429).detail).toContain('from one member');
    expect(Number(fourth.headers['retry-after'])).toBeGreaterThan(0);
    expect((await keeper.ask('GET', '/v1/me')).statusCode, 'another member').toBe(200);
    for (let n = 0; n < 3; n++) expect((await ask('GET', '/v1/sizes')).statusCode).toBe(200);
    expect(expectProblem(await ask('GET', '/v1/sizes'), 429).detail).toContain('from one address');
  });

  test('counts what is refused, too: unknown callers, forbidden things, URLs that are not there', async () => {
    const { ask, member } = await buildGroup({ RATE_LIMIT: '3' });
    expectProblem(await ask('GET', '/v1/me'), 401);
    expectProblem(await ask('GET', '/nothing'), 404);
    expectProblem(await ask('GET', '/v1/stock'), 401);
    expectProblem(await ask('GET', '/v1/me'), 429);
    const bo = await member('Bo');
    for (let n = 0; n < 3; n++) expectProblem(await bo.ask('GET', '/v1/members'), 403);
    expectProblem(await bo.ask('GET', '/v1/members'), 429);
  });

  test('has a limit in a group where nothing is said', async () => {
    const { ask } = await buildGroup({ RATE_LIMIT: '' });
    expect((await ask('GET', '/v1/sizes')).headers['x-ratelimit-limit']).toBe('600');
    const home = asking(await build());
    expect((await home('GET', '/v1/sizes')).headers['x-ratelimit-limit']).toBeUndefined();
  });
});
