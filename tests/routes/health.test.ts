import request from 'supertest';
import { expect, test } from 'vitest';
import { build } from '../src/build.ts';

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

test('/health is never counted against the rate limit', async () => {
  const app = await build({ RATE_LIMIT: '1' });
  for (let turn = 0; turn < 3; turn++) expect((await app.inject('/health')).statusCode).toBe(200);
});
