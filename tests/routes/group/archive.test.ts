import { get } from 'node:http';
import type { FastifyInstance } from 'fastify';
import { describe, expect, test } from 'vitest';
import { linesOf, sealed } from '../../src/archive/archive-text.ts';
import { build } from '../../src/build.ts';
import { expectProblem } from '../../src/expect-problem.ts';
import { asking, buildGroup, type TestMember } from '../../src/group.ts';

const cutter = { width: '12 in', height: '24 in' };
const ndjson = { 'content-type': 'application/x-ndjson' };

const restore = (app: FastifyInstance, text: string, query = '', headers = {}) =>
  app.inject({
    method: 'POST',
    url: `/v1/restore${query}`,
    headers: { ...ndjson, ...headers },
    payload: text,
  });

const headersOf = ({ token }: TestMember) => ({ authorization: `Bearer ${token.text}` });

describe('/v1/export', () => {
  test('gives everything as one file, to be saved', async () => {
    const { keeper, member } = await buildGroup();
    const bo = await member('Bo');
    await bo.ask('PUT', '/v1/cutters/attic', cutter);
    const reply = await keeper.ask('GET', '/v1/export');
    expect(reply.statusCode).toBe(200);
    expect(reply.headers).toMatchObject({
      'content-type': 'application/x-ndjson',
      'content-disposition': expect.stringMatching(
        /^attachment; filename="hemfold-\d{4}-\d\d-\d\d\.ndjson"$/,
      ),
      'cache-control': 'no-store',
    });
    const lines = linesOf(reply.body);
    expect(lines[0]).toMatchObject({ line: 'archive', of: 'hemfold', format: 1 });
    expect(lines.at(-1)).toMatchObject({ line: 'end', lines: lines.length - 1 });
    expect(reply.body).toContain('"body":{"width":"12 in","height":"24 in"}');
    for (const { token } of [keeper, bo]) expect(reply.body).not.toContain(token.text.slice(-43));
  });

  test('to a reader that leaves is over, and the next one gets all', async () => {
    const { app, keeper, member } = await buildGroup();
    const bo = await member('Bo');
    for (let n = 0; n < 60; n++)
      await bo.ask('PUT', `/v1/designs/d${n}`, {
        title: 'Gift',
        notes: 'x'.repeat(4000),
        spec: {
          style: 'twin-sleeve',
          stock: { size: 'craft-12x12' },
          dimensions: { panel: { width: '4 in', height: '5 3/4 in' }, spine: '1/2 in' },
        },
      });
    await app.listen({ host: '127.0.0.1', port: 0 });
    const address = app.server.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    await new Promise<void>((resolve, reject) => {
      const request = get({ port, path: '/v1/export', headers: headersOf(keeper) }, (reply) => {
        reply.once('data', () => {
          reply.destroy();
          resolve();
        });
      });
      request.on('error', reject);
    });
    const again = async () => (await keeper.ask('GET', '/v1/export')).body;
    await expect.poll(again, { timeout: 5_000 }).toContain('"line":"end"');
  });
});

describe('/v1/restore', () => {
  test('at home brings everything into an empty store, and elsewhere only where it may replace', async () => {
    const home = asking(await build());
    await home('PUT', '/v1/cutters/attic', cutter);
    const file = (await home('GET', '/v1/export')).body;

    const fresh = await build();
    const restored = await restore(fresh, file);
    expect([restored.statusCode, restored.json()]).toEqual([200, { members: 0, things: 1, versions: 1 }]);
    expect((await asking(fresh)('GET', '/v1/cutters/attic')).json()).toEqual(cutter);

    const problem = expectProblem(await restore(fresh, file), 409);
    expect(problem.errors[0]).toMatchObject({
      path: '/replace',
      remedy: expect.stringContaining('replace=true'),
    });
    await asking(fresh)('PUT', '/v1/cutters/cellar', cutter);
    expect((await restore(fresh, file, '?replace=true')).statusCode).toBe(200);
    expect((await asking(fresh)('GET', '/v1/cutters/cellar')).statusCode).toBe(404);
  });

  test('in a group brings members with their tokens, and refuses a file without anybody to keep it', async () => {
    const first = await buildGroup();
    const bo = await first.member('Bo');
    await bo.ask('PUT', '/v1/cutters/attic', cutter);
    const file = (await first.keeper.ask('GET', '/v1/export')).body;

    const second = await buildGroup();
    expectProblem(await restore(second.app, file, '', headersOf(second.keeper)), 409);
    const reply = await restore(second.app, file, '?replace=true', headersOf(second.keeper));
    expect([reply.statusCode, reply.json()]).toEqual([200, { members: 2, things: 1, versions: 1 }]);
    expectProblem(await second.keeper.ask('GET', '/v1/me'), 401);
    const moved = asking(second.app, headersOf(bo));
    expect((await moved('GET', '/v1/cutters/attic')).json()).toEqual(cutter);
    expect(
      (await asking(second.app, headersOf(first.keeper))('GET', '/v1/audit')).json().items[0],
    ).toMatchObject({
      act: 'restored',
      actor: 'Keeper',
    });

    const nobody = sealed(linesOf((await asking(await build())('GET', '/v1/export')).body).slice(0, -1));
    const problem = expectProblem(
      await restore(second.app, nobody, '?replace=true', headersOf(first.keeper)),
      409,
    );
    expect(problem.detail).toContain('nobody in the file could keep the group');
    expect((await moved('GET', '/v1/me')).statusCode).toBe(200);
  });

  test('names the line that is at fault', async () => {
    const app = await build();
    const file = (await asking(app)('GET', '/v1/export')).body;
    const problem = expectProblem(await restore(app, file.replace('"exported"', '"exploded"')), 400);
    expect(problem.detail).toMatch(
      /^Nothing was restored\. Line 2 of the file: \/act: "exploded" is not known here/,
    );
    expect(expectProblem(await restore(app, file.slice(0, -9)), 400).detail).toContain('is cut off');
    expectProblem(await restore(app, ''), 400);
  });

  test('takes nothing else, and no more than the limit', async () => {
    const app = await build({ RESTORE_LIMIT: '1' });
    const json = await asking(app)('POST', '/v1/restore', {});
    expect(expectProblem(json, 415).detail).toContain('application/x-ndjson');
    const problem = expectProblem(await restore(app, `${'x'.repeat(1024 * 1024)}\n`), 413);
    expect(problem.detail).toBe('The file is larger than 1 MiB.');
    expect(problem.errors[0]?.remedy).toContain('RESTORE_LIMIT');
    expect(expectProblem(await restore(app, 'x\n', '?replace=yes'), 400).errors[0]?.path).toBe('/replace');
  });

  test('runs one at a time', async () => {
    const app = await build();
    const file = (await asking(app)('GET', '/v1/export')).body;
    const statuses = (await Promise.all([1, 2, 3].map(() => restore(app, file, '?replace=true')))).map(
      ({ statusCode }) => statusCode,
    );
    expect(statuses.toSorted()).toEqual([200, 409, 409]);
    expect((await restore(app, file, '?replace=true')).statusCode).toBe(200);
  });
});
