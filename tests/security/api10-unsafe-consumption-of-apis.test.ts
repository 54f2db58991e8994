/*
 * OWASP API Security Top 10 (2023), API10: what comes from other programs is trusted no more than what users send: the
 * file that brings everything back, what stands in the database, and the headers of proxies.
 */
import { describe, expect, test } from 'vitest';
import { homeCaller } from '../../src/members/caller.ts';
import { linesOf, sealed } from '../src/archive/archive-text.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { asking, buildGroup } from '../src/group.ts';
import { cutter, folderSpec as spec } from './things.ts';

describe('a file to restore', () => {
  const send = (app: Awaited<ReturnType<typeof build>>, text: string) =>
    app.inject({
      method: 'POST',
      url: '/v1/restore?replace=true',
      headers: { 'content-type': 'application/x-ndjson' },
      payload: text,
    });

  test('that is not exactly as one was written changes nothing, whatever is wrong with it', async () => {
    const app = await build();
    const ask = asking(app);
    await ask('PUT', '/v1/cutters/attic', cutter);
    const lines = linesOf((await ask('GET', '/v1/export')).body).slice(0, -1);
    const shelf = lines.findIndex(({ line }) => line === 'shelf');
    const changed = (members: Record<string, unknown>, at = shelf) =>
      sealed(lines.map((line, index) => (index === at ? { ...line, ...members } : line)));
    for (const text of [
      changed({ kind: 'members' }),
      changed({ owner: '' }),
      changed({ highestRemoved: -1 }),
      changed({ highestRemoved: 2 ** 31 }),
      changed({ drop: 'table item' }),
      changed({ name: `x${'\0'}` }, shelf + 1),
      changed({ version: 7 }, shelf + 1),
      changed({ body: 'x'.repeat(300_000) }, shelf + 2),
      changed({ body: JSON.parse('{"__proto__":{"a":1}}') }, shelf + 2),
      changed({ body: JSON.parse(`${'['.repeat(70)}${']'.repeat(70)}`) }, shelf + 2),
      sealed(lines).replace('12 in', '13 in'),
      sealed(lines).split('\n').slice(0, -2).join('\n'),
      '[]\n',
      `${'['.repeat(50_000)}\n`,
    ]) {
      const problem = expectProblem(await send(app, text), 400);
      expect(problem.detail).toMatch(/^Nothing was restored\. Line \d+ of the file/);
    }
    expect((await ask('GET', '/v1/cutters/attic')).json()).toEqual(cutter);
    expect((await send(app, sealed(lines))).statusCode, 'the same, unchanged').toBe(200);
  });
});

describe('what stands in the database', () => {
  test('is read as strictly as what a user sends, where it is used', async () => {
    const app = await build();
    const ask = asking(app);
    const { owner } = homeCaller;
    const broken = [
      null,
      7,
      'x',
      [],
      { __html: '<script>' },
      { size: '../../etc/passwd' },
      { width: '1e999 in' },
    ];
    for (const body of broken) {
      await app.store.put(owner, 'stock', 'blue', body, 'any');
      await app.store.put(owner, 'conventions', 'mine', body, 'any');
      await app.store.put(owner, 'designs', 'gift', { title: 'Gift', spec: body }, 'any');
      const share = await app.store.share(owner, 'gift');
      if (typeof share === 'string') throw new Error(share);
      for (const reply of [
        await ask('POST', '/v1/folders/svg', { ...spec, stock: 'blue' }),
        await ask('POST', '/v1/folders/plan', { ...spec, stock: 'blue' }),
        await ask('GET', `/v1/shared/${share.secret}/svg`),
        await ask('GET', `/v1/shared/${share.secret}/plan`),
        await ask('GET', `/v1/shared/${share.secret}/views`),
      ]) {
        expect(reply.statusCode, `${JSON.stringify(body)}: ${reply.body}`).toBeOneOf([400, 409, 422]);
        expect(reply.headers['content-type']).toBe('application/problem+json');
      }
      const mine = await ask('POST', '/v1/folders/svg', { ...spec, convention: 'mine' });
      expect(mine.statusCode, JSON.stringify(body)).toBe(400);
    }
  });
});

describe('the headers of a proxy', () => {
  const told = {
    'x-forwarded-for': '203.0.113.9',
    'x-forwarded-proto': 'https',
    'x-forwarded-host': 'folders.example',
  };

  test('from whom nobody trusts buy no fresh limit', async () => {
    const { ask } = await buildGroup({ RATE_LIMIT: '2' });
    for (let n = 0; n < 2; n++)
      expect(
        (await ask('GET', '/v1/sizes', undefined, { 'x-forwarded-for': `203.0.113.${n}` })).statusCode,
      ).toBe(200);
    expectProblem(await ask('GET', '/v1/sizes', undefined, { 'x-forwarded-for': '203.0.113.7' }), 429);
  });

  test('from a trusted one do', async () => {
    const { ask } = await buildGroup({ RATE_LIMIT: '2', TRUST_PROXY: 'loopback' });
    for (let n = 0; n < 4; n++)
      expect(
        (await ask('GET', '/v1/sizes', undefined, { 'x-forwarded-for': `203.0.113.${n}` })).statusCode,
      ).toBe(200);
  });

  test.each([
    ['false', 403],
    ['10.0.0.0/8', 403],
    ['loopback', 303],
  ])('with TRUST_PROXY=%s a sign-in over a foreign name is answered %i', async (trust, status) => {
    const { app, keeper } = await buildGroup({ TRUST_PROXY: trust });
    const reply = await app.inject({
      method: 'POST',
      url: '/sign-in',
      headers: {
        ...told,
        origin: 'https://folders.example',
        'content-type': 'application/x-www-form-urlencoded',
      },
      payload: new URLSearchParams({ token: keeper.token.text }).toString(),
    });
    expect(reply.statusCode).toBe(status);
    if (status === 303) expect(String(reply.headers['set-cookie'])).toMatch(/^__Host-.*Secure/);
  });

  test('do not let a foreign name pass for this machine at home', async () => {
    const app = await build({ TRUST_PROXY: 'loopback' });
    const headers = { host: 'folders.example', 'x-forwarded-host': 'localhost' };
    expectProblem(await asking(app)('GET', '/v1/me', undefined, headers), 421);
  });
});
