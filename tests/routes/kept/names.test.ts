import { applyPatch, type Operation } from 'rfc6902';
import { describe, expect, test } from 'vitest';
import { startingConventions } from '../../../shared/kept/starting-conventions.ts';
import { build } from '../../src/build.ts';
import { expectProblem } from '../../src/expect-problem.ts';

const dimensions = { panel: { width: '4 in', height: '5 3/4 in' }, spine: '1/2 in' };
const paper = { size: 'craft-12x12', caliper: '0.3 mm' } as const;
const large = { width: '400 mm', height: '600 mm', caliper: '0.3 mm' } as const;
const cutter = { width: '13 in', height: '24 in' };
const convention = { layers: { cut: { colour: '#123456' } }, outline: 'always' };

interface Proposal {
  readonly message: string;
  readonly changes: readonly { readonly op: string; readonly path: string }[];
  readonly gives: { readonly sheet: string };
}

/** An app whose only user keeps a paper, a larger one, a cutter and a convention. */
async function stocked() {
  const app = await build();
  const put = (url: string, payload: object) => app.inject({ method: 'PUT', url, payload });
  await put('/v1/stock/blue', { ...paper, count: 3, faces: { outside: 'waves' }, notes: 'top drawer' });
  await put('/v1/stock/large', large);
  await put('/v1/cutters/bench', cutter);
  await put('/v1/conventions/mine', convention);
  const post = (url: string, payload: object) => app.inject({ method: 'POST', url, payload });
  return { app, put, post };
}

describe('a spec may name what is kept', () => {
  const named = { style: 'twin-sleeve', stock: 'blue', cutter: 'bench', convention: 'mine', dimensions };
  const inline = { style: 'twin-sleeve', stock: paper, cutter, convention, dimensions };

  test.each(['plan', 'svg', 'fold', 'views'])(
    '%s: the reply is that to the spec with everything in it',
    async (call) => {
      const { post } = await stocked();
      const reply = await post(`/v1/folders/${call}`, named);
      expect(reply.statusCode, reply.body).toBe(200);
      expect(reply.body).toBe((await post(`/v1/folders/${call}`, inline)).body);
    },
  );

  test('in a list of papers too, and when asking what is possible', async () => {
    const { post } = await stocked();
    const reply = await post('/v1/folders/plan', { ...named, stock: ['blue', large, 'large'] });
    expect(reply.body).toBe(
      (await post('/v1/folders/plan', { ...inline, stock: [paper, large, large] })).body,
    );
    const { dimensions: _, convention: __, ...question } = named;
    expect((await post('/v1/folders/possible', question)).statusCode).toBe(200);
  });

  test('a strip may name a convention', async () => {
    const { post } = await stocked();
    const reply = await post('/v1/calibration/strip', { length: '220 mm', convention: 'mine' });
    expect(reply.body).toContain('#123456');
  });

  test('a drawing follows what is kept: a changed convention is not answered from memory', async () => {
    const { put, post } = await stocked();
    expect((await post('/v1/folders/svg', named)).body).toContain('#123456');
    await put('/v1/conventions/mine', { ...convention, layers: { cut: { colour: '#654321' } } });
    expect((await post('/v1/folders/svg', named)).body).toContain('#654321');
  });

  test('a name that stands for nothing is refused with its path', async () => {
    const { post } = await stocked();
    const { errors } = expectProblem(
      await post('/v1/folders/plan', { ...named, stock: ['blue', 'green'], convention: 'yours' }),
      400,
    );
    expect(errors.map(({ path }) => path)).toEqual(['/stock/1', '/convention']);
    expect(errors[1]).toEqual({
      path: '/convention',
      message: 'nothing is kept under the name "yours" here',
      remedy: 'give the convention itself, or keep one under that name with PUT /v1/conventions/{name}',
    });
  });

  test('remedies and alternatives apply to the spec as it was sent, names and all', async () => {
    const { post } = await stocked();
    const wide = { width: '200 cm', height: '200 cm' };
    const contents = { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } };
    const [tooSmall, fits] = [
      { style: 'twin-sleeve', stock: 'blue', contents },
      { style: 'twin-sleeve', stock: ['blue', 'large'], cutter: wide, contents },
    ];
    const refused = expectProblem(await post('/v1/folders/plan', tooSmall), 422);
    const planned = (await post('/v1/folders/plan', fits)).json();
    const proposals = [
      ...(refused.remedies as Proposal[]).map((each) => ({ spec: tooSmall, ...each })),
      ...(planned.alternatives as Proposal[]).map((each) => ({
        spec: fits,
        ...each,
      })),
    ];
    expect(proposals.length).toBeGreaterThan(3);
    let reachedInto = 0;
    for (const { spec, changes, gives, message } of proposals) {
      const patched = structuredClone(spec);
      expect(applyPatch(patched, changes as Operation[]).filter(Boolean), message).toEqual([]);
      const reply = await post('/v1/folders/plan', patched);
      expect(reply.statusCode, message).toBe(200);
      expect(reply.json().sheet.title, message).toBe(gives.sheet);
      if (changes.some(({ path }) => path === '/stock') && Array.isArray(spec.stock) === false) reachedInto++;
    }
    expect(reachedInto).toBeGreaterThan(0);
  });
});

describe('starting conventions', () => {
  test.each(startingConventions.map((each) => [each.name, each] as const))(
    '"%s" draws, as itself and by its name',
    async (name, { convention: own }) => {
      const { post } = await stocked();
      const spec = { style: 'twin-sleeve', stock: paper, dimensions };
      const reply = await post('/v1/folders/svg', { ...spec, convention: name });
      expect(reply.statusCode, reply.body).toBe(200);
      expect(reply.body).toBe((await post('/v1/folders/svg', { ...spec, convention: own })).body);
    },
  );

  test('every one can be kept as one’s own, and one’s own wins', async () => {
    const { put, post } = await stocked();
    for (const { name, convention: own } of startingConventions)
      expect((await put(`/v1/conventions/${encodeURIComponent(name)}`, own)).statusCode).toBe(201);
    await put('/v1/conventions/inches', { rootUnit: 'px' });
    const spec = { style: 'twin-sleeve', stock: paper, dimensions, convention: 'inches' };
    expect((await post('/v1/folders/svg', spec)).body).toContain('width="1152');
  });
});
