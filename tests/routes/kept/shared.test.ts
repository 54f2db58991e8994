import { describe, expect, test } from 'vitest';
import { build } from '../../src/build.ts';
import { expectProblem } from '../../src/expect-problem.ts';

const dimensions = { panel: { width: '4 in', height: '5 3/4 in' }, spine: '1/2 in' };
const paper = { size: 'craft-12x12', caliper: '0.3 mm' } as const;
const spec = { style: 'twin-sleeve', stock: 'blue', convention: 'mine', dimensions };
const design = { title: 'Thank-you folder', credit: 'Thursdays', licence: 'CC-BY-4.0', spec };
const begun = Date.parse('2026-11-25T18:00:00Z');

/** A kept design, and ways to ask about it; `later` sets the clock. */
async function designed() {
  let now = begun;
  const app = await build({}, { clock: () => new Date(now) });
  const ask = (method: 'GET' | 'PUT' | 'POST' | 'DELETE', url: string, payload?: object) =>
    app.inject({ method, url, ...(payload === undefined ? {} : { payload }) });
  await ask('PUT', '/v1/stock/blue', { ...paper, count: 3 });
  await ask('PUT', '/v1/conventions/mine', { layers: { cut: { colour: '#123456' } }, outline: 'always' });
  await ask('PUT', '/v1/designs/thanks', design);
  const share = async (body: object = {}) => (await ask('POST', '/v1/designs/thanks/shares', body)).json();
  const later = (minutes: number) => {
    now = begun + minutes * 60_000;
  };
  return { ask, share, later };
}

describe('a link to a design', () => {
  test('gives the design with its names resolved, its plan, its pictures and its drawing', async () => {
    const { ask, share } = await designed();
    const { href } = await share();
    const shared = (await ask('GET', href)).json();
    const standingAlone = {
      ...spec,
      stock: paper,
      convention: { layers: { cut: { colour: '#123456' } }, outline: 'always' },
    };
    expect(shared).toEqual({
      ...design,
      spec: standingAlone,
      version: 1,
      changed: new Date(begun).toISOString(),
    });
    const post = (call: string) => ask('POST', `/v1/folders/${call}`, standingAlone);
    expect((await ask('GET', `${href}/plan`)).body).toBe((await post('plan')).body);
    expect((await ask('GET', `${href}/svg`)).body).toBe((await post('svg')).body);
    expect((await ask('GET', `${href}/views?view=closed`)).body).toBe((await post('views?view=closed')).body);
  });

  test('draws in the reader’s own convention', async () => {
    const { ask, share } = await designed();
    const { href } = await share();
    expect((await ask('GET', `${href}/svg?convention=inches`)).body).toContain('width="12in"');
    const own = await ask('POST', `${href}/svg`, {
      convention: { layers: { cut: { colour: '#ABCDEF' } }, outline: 'always' },
    });
    expect(own.body).toContain('#abcdef');
    expect(own.body).not.toContain('#123456');
    const problem = expectProblem(await ask('GET', `${href}/svg?convention=nobodys`), 400);
    expect(problem.errors[0]?.path).toBe('/convention');
    expectProblem(await ask('POST', `${href}/svg`, { convention: { layers: { cut: { width: 3 } } } }), 400);
  });

  test('shows the current version', async () => {
    const { ask, share } = await designed();
    const { href } = await share();
    await ask('PUT', '/v1/designs/thanks', { ...design, title: 'Better' });
    expect((await ask('GET', href)).json()).toMatchObject({ title: 'Better', version: 2 });
  });

  test('cannot be guessed: 256 random bits, and no two alike', async () => {
    const { share } = await designed();
    const secrets = await Promise.all(Array.from({ length: 20 }, () => share()));
    for (const { secret } of secrets) expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
    expect(new Set(secrets.map(({ secret }) => secret)).size).toBe(20);
  });

  test('changes nothing', async () => {
    const { ask, share } = await designed();
    const { href } = await share();
    for (const method of ['PUT', 'DELETE'] as const) expectProblem(await ask(method, href, design), 405);
    expectProblem(await ask('POST', href, design), 405);
    expect((await ask('GET', '/v1/designs/thanks')).json()).toEqual(design);
  });

  test('gives nothing once it is revoked, has expired, or its design is removed; all answer alike', async () => {
    const { ask, share, later } = await designed();
    const [revoked, expiring, orphan] = [
      await share(),
      await share({ expires: '2026-11-25T18:30:00Z' }),
      await share(),
    ];
    expect((await ask('GET', expiring.href)).statusCode).toBe(200);
    expect((await ask('DELETE', `/v1/designs/thanks/shares/${revoked.id}`)).statusCode).toBe(204);
    later(31);
    const texts = new Set<string>();
    for (const { href } of [revoked, expiring, { href: '/v1/shared/mistyped' }]) {
      for (const part of ['', '/plan', '/svg', '/views'])
        expectProblem(await ask('GET', `${href}${part}`), 404);
      texts.add((await ask('GET', href)).body);
    }
    expect((await ask('GET', orphan.href)).statusCode).toBe(200);
    await ask('DELETE', '/v1/designs/thanks');
    texts.add((await ask('GET', orphan.href)).body);
    expect(texts.size).toBe(1);
  });

  test('is listed without its secret', async () => {
    const { ask, share } = await designed();
    const { id, secret } = await share({ expires: '2027-01-01T00:00:00+01:00' });
    const list = await ask('GET', '/v1/designs/thanks/shares');
    expect(list.json().items).toEqual([
      { id, created: new Date(begun).toISOString(), expires: '2026-12-31T23:00:00.000Z' },
    ]);
    expect(list.body).not.toContain(secret);
  });

  test('is refused for a time that has passed, for no time, and for no design', async () => {
    const { ask } = await designed();
    const shares = (name: string, body: object) => ask('POST', `/v1/designs/${name}/shares`, body);
    expectProblem(await shares('thanks', { expires: '2026-11-25T17:59:00Z' }), 400);
    expectProblem(await shares('thanks', { expires: 'tomorrow' }), 400);
    expectProblem(await shares('other', {}), 404);
    expectProblem(await ask('GET', '/v1/designs/other/shares'), 404);
    expectProblem(await ask('DELETE', '/v1/designs/thanks/shares/none'), 404);
  });

  test('tells whoever reads it when its owner no longer keeps what it names', async () => {
    const { ask, share } = await designed();
    const { href } = await share();
    await ask('DELETE', '/v1/stock/blue');
    expectProblem(await ask('GET', `${href}/plan`), 409);
    expect((await ask('GET', href)).json().spec.stock).toBe('blue');
  });

  test('a design may only name what is kept', async () => {
    const { ask } = await designed();
    const { errors } = expectProblem(
      await ask('PUT', '/v1/designs/other', { ...design, spec: { ...spec, stock: 'green' } }),
      400,
    );
    expect(errors[0]?.path).toBe('/spec/stock');
  });
});
