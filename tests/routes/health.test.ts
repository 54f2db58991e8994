import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import request from 'supertest';
import { describe, expect, test } from 'vitest';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { tempFolder } from '../src/temp-folder.ts';

test.each(['/health', '/health/', '/health/live'])('GET %s answers that all is well', async (url) => {
  const app = await build();
  const reply = await request(app.server).get(url).expect(200);
  expect(reply.body).toEqual({ status: 'ok' });
  expect(reply.type).toBe('application/json');
});

test('HEAD /health answers without a body', async () => {
  const app = await build();
  const reply = await app.inject({ method: 'HEAD', url: '/health' });
  expect(reply.statusCode).toBe(200);
  expect(reply.body).toBe('');
});

test.each(['/health', '/health/live'])('%s is never counted against the rate limit', async (url) => {
  const app = await build({ RATE_LIMIT: '1' });
  for (let turn = 0; turn < 3; turn++) expect((await app.inject(url)).statusCode).toBe(200);
});

describe('without a usable store', () => {
  async function broken() {
    const file = join(await tempFolder(), 'no-folder');
    await writeFile(file, '');
    return build({ DATA_DIR: file });
  }

  test('/health is 503 with a time to ask again, and tells nothing of the place', async () => {
    const app = await broken();
    const reply = await app.inject('/health');
    expectProblem(reply, 503);
    expect(reply.headers['retry-after']).toBe('5');
    expect(reply.body).not.toContain('no-folder');
  });

  test('/health/live stays 200, and so do plans: they need no store', async () => {
    const app = await broken();
    expect((await app.inject('/health/live')).statusCode).toBe(200);
    expect((await app.inject('/v1/sizes')).statusCode).toBe(200);
  });
});
