/*
 * OWASP API Security Top 10 (2023), API8: without any setting the service is closed, and no reply tells or allows more
 * than it must.
 */
import { connect } from 'node:net';
import { describe, expect, test } from 'vitest';
import { InvalidConfig, readConfig } from '../../src/config.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { asking, buildGroup } from '../src/group.ts';
import { buildProbed } from '../src/probe-app.ts';
import { requestFor, routesOf } from './routes-of.ts';
import { cutter } from './things.ts';

type Method = Parameters<ReturnType<typeof asking>>[0];

describe('every reply', () => {
  const required: Readonly<Record<string, RegExp>> = {
    'content-security-policy':
      /^(?=.*default-src 'self')(?=.*script-src 'self')(?=.*frame-ancestors 'none')(?!.*'unsafe)/,
    'x-content-type-options': /^nosniff$/,
    'x-frame-options': /^DENY$/,
    'referrer-policy': /^same-origin$/,
    'cross-origin-opener-policy': /^same-origin$/,
    'cross-origin-resource-policy': /^same-origin$/,
  };

  test('of every route keeps browsers from running, framing and guessing, and names no software', async () => {
    const { app, ask, keeper } = await buildGroup();
    let replies = 0;
    for (const route of routesOf(app)) {
      const { method, url } = requestFor(route);
      for (const caller of [ask, keeper.ask]) {
        const { headers } = await caller(method as Method, url);
        for (const [name, value] of Object.entries(required))
          expect(String(headers[name]), `${route} ${name}`).toMatch(value);
        expect(headers.server, route).toBeUndefined();
        expect(headers['x-powered-by'], route).toBeUndefined();
        replies++;
      }
    }
    expect(replies).toBeGreaterThan(150);
  });

  test('is for its own pages alone: no other site may read it, with or without being asked first', async () => {
    const { ask, keeper } = await buildGroup();
    const foreign = { origin: 'https://elsewhere.example' };
    const asked = { ...foreign, 'access-control-request-method': 'PUT' };
    for (const reply of [
      await keeper.ask('GET', '/v1/me', undefined, foreign),
      await ask('GET', '/v1/sizes', undefined, foreign),
      await ask('OPTIONS', '/v1/cutters/attic', undefined, asked),
      await ask('OPTIONS', '/v1/me', undefined, asked),
    ])
      expect(Object.keys(reply.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  test('that holds what only its caller may see is kept by no cache on the way', async () => {
    const { keeper, member } = await buildGroup();
    const bo = await member('Bo');
    await bo.ask('PUT', '/v1/cutters/attic', cutter);
    for (const url of ['/v1/me', '/v1/cutters', '/v1/cutters/attic', '/v1/members/Bo/tokens'])
      expect((await bo.ask('GET', url)).headers['cache-control'], url).toMatch(/private|no-store/);
    const made = await bo.ask('POST', '/v1/members/Bo/tokens', { scopes: ['read'] });
    expect(made.headers['cache-control']).toBe('no-store');
    expect((await keeper.ask('GET', '/v1/export')).headers['cache-control']).toBe('no-store');
    expect((await keeper.ask('GET', '/sign-in')).headers['cache-control']).toBe('no-store');
  });
});

describe('an error', () => {
  test('tells nothing of the program: no path, no stack, no query, no name of a package', async () => {
    const app = await buildProbed({ GROUP: 'true' });
    const added = await app.members.add({ name: 'test' }, 'Bo', { scopes: ['read', 'write'] });
    if (typeof added === 'string') throw new Error(added);
    const ask = asking(app, { authorization: `Bearer ${added.token.text}` });
    for (const reply of [
      await ask('GET', '/probe/fault'),
      await ask('GET', '/probe/reply'),
      await ask('POST', '/probe', { style: 1 }),
      await ask('GET', '/%zz'),
      await ask('GET', '/v1/members/%00'),
      await ask('PUT', '/v1/cutters/attic', { $where: 1, "'; drop table item; --": 1 }),
    ]) {
      expect(reply.statusCode).toBeGreaterThanOrEqual(400);
      expect(reply.body).not.toMatch(/swordfish|\bat \w+ \(|node_modules|\.ts\b|sqlite|kysely|fastify|zod/i);
    }
  });

  test('of the store says neither where it is nor what it said', async () => {
    const group = await buildGroup();
    await group.app.store.close();
    const reply = await group.keeper.ask('GET', '/v1/me');
    expectProblem(reply, 503);
    expect(reply.body).not.toMatch(/sqlite|hemfold-app|\/tmp|SQL/i);
    expect((await group.ask('GET', '/v1/sizes')).statusCode, 'what needs no store').toBe(200);
  });
});

describe('a method', () => {
  /** Sends one line as it is, since clients refuse to. */
  const raw = (port: number, line: string) =>
    new Promise<string>((resolve, reject) => {
      let received = '';
      const socket = connect(port, '127.0.0.1', () =>
        socket.write(
          `${line}\r\nhost: 127.0.0.1\r\nauthorization: Bearer swordfish\r\nconnection: close\r\n\r\n`,
        ),
      );
      socket.setEncoding('utf8').on('data', (part: string) => {
        received += part;
      });
      socket.on('close', () => resolve(received));
      socket.on('error', reject);
    });

  test.each(['TRACE /v1/me', 'TRACK /v1/me', 'CONNECT elsewhere.example:443', 'DEBUG /v1/me', 'PROPFIND /'])(
    '%s is not served, and nothing of the request comes back',
    async (line) => {
      const { app } = await buildGroup();
      await app.listen({ host: '127.0.0.1', port: 0 });
      const address = app.server.address();
      const port = typeof address === 'object' && address ? address.port : 0;
      const reply = await raw(port, `${line} HTTP/1.1`);
      expect(reply).not.toMatch(/^HTTP\/1\.1 2\d\d/);
      expect(reply).not.toContain('swordfish');
    },
  );
});

describe('without sign-in', () => {
  test('the service listens to this machine alone, and anything else means sign-in', () => {
    expect(readConfig({})).toMatchObject({ host: '127.0.0.1', group: false });
    for (const HOST of ['0.0.0.0', '::', '192.0.2.7', 'folders.example']) {
      expect(readConfig({ HOST }).group, HOST).toBe(true);
      expect(() => readConfig({ HOST, GROUP: 'false' }), HOST).toThrow(InvalidConfig);
    }
  });

  test.each([
    'folders.example',
    'folders.example:8788',
    '127.0.0.1.folders.example',
    '192.0.2.7',
    'localhost.folders.example',
  ])('a page that calls this machine %j is not answered, on no route', async (host) => {
    const app = await build();
    for (const url of ['/v1/me', '/v1/stock', '/v1/sizes', '/health', '/docs', '/nothing'])
      expectProblem(await asking(app)('GET', url, undefined, { host }), 421);
  });

  test.each([
    'localhost',
    'localhost:8788',
    '127.0.0.1:8788',
    '127.8.8.8',
    '[::1]:8788',
    'hemfold.localhost',
  ])('who calls it %s is', async (host) => {
    expect((await asking(await build())('GET', '/v1/me', undefined, { host })).statusCode).toBe(200);
  });

  test('a foreign page cannot write, with any of the ways that need no leave', async () => {
    const app = await build();
    for (const headers of [
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
      { origin: 'https://elsewhere.example' },
      { origin: 'null' },
    ]) {
      expectProblem(await asking(app)('PUT', '/v1/cutters/attic', cutter, headers), 403);
      expectProblem(await asking(app)('POST', '/v1/restore', undefined, headers), 403);
    }
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data'])
      expectProblem(
        await app.inject({
          method: 'POST',
          url: '/v1/folders/plan',
          headers: { 'content-type': type },
          payload: '{}',
        }),
        415,
      );
    const own = { 'sec-fetch-site': 'same-origin' };
    expect((await asking(app)('PUT', '/v1/cutters/attic', cutter, own)).statusCode).toBe(201);
    expect((await asking(app)('PUT', '/v1/cutters/cellar', cutter)).statusCode, 'a program').toBe(201);
  });
});
