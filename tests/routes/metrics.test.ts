import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { hemfoldVersion } from '../../src/version.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';
import { buildGroup } from '../src/group.ts';
import { readMetrics, type Sample } from '../src/metrics/read-metrics.ts';
import { tempFolder } from '../src/temp-folder.ts';

async function scrape(app: FastifyInstance): Promise<readonly Sample[]> {
  const reply = await app.inject('/metrics');
  expect(reply.statusCode).toBe(200);
  return readMetrics(reply.body);
}

/** The value of the one series that has a name and at least these labels. */
function valueIn(samples: readonly Sample[], name: string, labels: Readonly<Record<string, string>> = {}) {
  const found = samples.filter(
    (sample) =>
      sample.name === name && Object.entries(labels).every(([key, value]) => sample.labels[key] === value),
  );
  expect(found.length, `${name} ${JSON.stringify(labels)}`).toBeLessThan(2);
  return found[0]?.value;
}

const requestCount = 'http_request_duration_seconds_count';

describe('GET /metrics', () => {
  test('is in the text format, never kept by a cache, with process, build and request numbers', async () => {
    const app = await build();
    for (const url of ['/health', '/health/']) await app.inject(url);
    const { headers, body } = await app.inject('/metrics');
    expect(headers['content-type']).toBe('text/plain; version=0.0.4; charset=utf-8');
    expect(headers['cache-control']).toBe('no-store');
    const samples = readMetrics(body);
    expect(valueIn(samples, 'hemfold_build_info', { version: hemfoldVersion })).toBe(1);
    expect(valueIn(samples, 'process_resident_memory_bytes')).toBeGreaterThan(1e6);
    expect(valueIn(samples, 'nodejs_eventloop_lag_p99_seconds')).toBeDefined();
    expect(valueIn(samples, requestCount, { method: 'GET', route: '/health', status: '200' })).toBe(2);
  });

  test('names routes by their pattern, and a URL without one "none"', async () => {
    const app = await build();
    for (const url of ['/problems/invalid-spec', '/problems/no-such-problem', '/seahorse'])
      await app.inject(url);
    await app.inject({ method: 'DELETE', url: '/health' });
    const samples = await scrape(app);
    const count = (labels: Readonly<Record<string, string>>) => valueIn(samples, requestCount, labels);
    expect(count({ route: '/problems/:name', status: '200' })).toBe(1);
    expect(count({ route: '/problems/:name', status: '400' })).toBe(1);
    expect(count({ route: 'none', method: 'GET', status: '404' })).toBe(1);
    expect(count({ route: 'none', method: 'DELETE', status: '405' })).toBe(1);
    expect(JSON.stringify(samples)).not.toMatch(/seahorse|no-such-problem/);
  });

  test('counts plans by style, solved and refused', async () => {
    const app = await build();
    const post = (payload: object) => app.inject({ method: 'POST', url: '/v1/folders/plan', payload });
    expect((await post(firstSpec)).statusCode).toBe(200);
    const tooSmall = { ...firstSpec, stock: { width: '20 mm', height: '20 mm', grammage: 200 } };
    expect((await post(tooSmall)).statusCode).toBe(422);
    expect((await post({})).statusCode).toBe(400);
    const samples = await scrape(app);
    const plans = samples.filter(({ name }) => name === 'hemfold_plans_total');
    expect(plans).toHaveLength(2);
    for (const outcome of ['solved', 'refused'])
      expect(valueIn(plans, 'hemfold_plans_total', { style: 'twin-sleeve', outcome })).toBe(1);
  });

  test('counts work on the store, and what keeps it from its work', async () => {
    const folder = await tempFolder();
    const app = await build({ DATA_DIR: folder });
    await app.store.put('home', 'stock', 'lamp room blue', { note: 'seahorse' }, 'any');
    await app.store.read('home', 'stock', 'lamp room blue');
    const file = join(folder, 'no-folder');
    await writeFile(file, '');
    const broken = await build({ DATA_DIR: file });
    await expect(broken.store.ready()).rejects.toThrow('cannot be read');
    const samples = await scrape(app);
    const count = (operation: string, outcome: string) =>
      valueIn(samples, 'hemfold_store_operation_duration_seconds_count', { operation, outcome });
    expect([count('change', 'done'), count('read', 'done'), count('read', 'unusable')]).toEqual([1, 1, 1]);
    expect(JSON.stringify(samples)).not.toMatch(/seahorse|lamp room/);
  });

  test('counts for one service only what happens while it is open', async () => {
    const [app, other] = [await build(), await build()];
    await other.inject('/health');
    const samples = await scrape(app);
    expect(samples.filter(({ name }) => name === requestCount)).toEqual([]);
  });
});

test('in a group /metrics needs a member who may read; /health and /health/live need nobody', async () => {
  const { ask, member, keeper } = await buildGroup();
  expectProblem(await ask('GET', '/metrics'), 401);
  expect((await ask('HEAD', '/metrics')).statusCode).toBe(401);
  const meter = await member('Meter', { scopes: ['read'] });
  const reply = await meter.ask('GET', '/metrics');
  expect(reply.statusCode).toBe(200);
  for (const { name, token } of [meter, keeper])
    for (const word of [name, token.id, token.text]) expect(reply.body).not.toContain(word);
  for (const url of ['/health', '/health/live']) expect((await ask('GET', url)).statusCode).toBe(200);
});

test('10,000 different URLs, methods and bodies make no new series', { timeout: 240_000 }, async () => {
  const app = await build();
  const series = async () =>
    new Set(
      (await scrape(app))
        .filter(({ name }) => /^(?:http|hemfold)_/.test(name))
        .map(({ name, labels }) => JSON.stringify([name, labels])),
    );
  const methods = ['GET', 'PUT', 'POST', 'DELETE', 'PATCH', 'OPTIONS', 'HEAD', 'PROPFIND', 'MKCOL'] as const;
  const round = async (number: number) => {
    const method = methods[number % methods.length] ?? 'GET';
    await app.inject({ method: method as 'GET', url: `/seahorse-${number}?tide=${number}` });
    if (number % 10 === 0) await app.inject(`/problems/seahorse-${number}`);
    if (number % 10 === 5)
      await app.inject({ method: 'POST', url: '/v1/folders/plan', payload: { style: `seahorse-${number}` } });
  };
  for (let number = 0; number < 90; number++) await round(number);
  await series(); // the scrape has a series, too
  const before = await series();
  for (let number = 90; number < 10_000; number++) await round(number);
  const after = await series();
  expect([...after].filter((each) => !before.has(each))).toEqual([]);
  expect(before.size).toBeLessThan(500);
});
