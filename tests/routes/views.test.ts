import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

const url = '/v1/folders/views';
const ask = async (query: string, payload: object = firstSpec, headers: Record<string, string> = {}) =>
  (await build()).inject({ method: 'POST', url: `${url}${query}`, payload, headers });

describe('POST /v1/folders/views', () => {
  test.each(['', '?view=all', '?view=outside', '?view=closed', '?view=step-16'])(
    '%s answers SVG',
    async (query) => {
      const reply = await ask(query);
      expect(reply.statusCode).toBe(200);
      expect(reply.headers['content-type']).toMatch(/^image\/svg\+xml/);
      expect(reply.body).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<svg [\s\S]+<\/svg>\n$/);
    },
  );

  test('without a view it shows all', async () => {
    expect((await ask('')).body).toBe((await ask('?view=all')).body);
  });

  test('has a strong entity tag, the same for the same spec and another for another view', async () => {
    const [one, again, other] = await Promise.all([
      ask('?view=inside'),
      ask('?view=inside'),
      ask('?view=outside'),
    ]);
    expect(one.headers.etag).toMatch(/^"[^"]+"$/);
    expect(again.headers.etag).toBe(one.headers.etag);
    expect(other.headers.etag).not.toBe(one.headers.etag);
    const known = await ask('?view=inside', firstSpec, { 'if-none-match': String(one.headers.etag) });
    expectProblem(known, 412);
  });

  test('a view that is not known is refused with 400 and the nearest name', async () => {
    const problem = expectProblem(await ask('?view=outsid'), 400);
    expect(problem.detail).toContain('The query is not valid');
    expect(problem.errors).toEqual([
      {
        path: '/view',
        message: '"outsid" is not known here',
        remedy: expect.stringContaining('did you mean "outside"?'),
      },
    ]);
  });

  test.each(['step-0', 'step-100', 'step-', 'step-1.5', '', 'step-1%0A'])(
    'the view "%s" is refused with 400',
    async (view) => {
      const problem = expectProblem(await ask(`?view=${view}`), 400);
      expect(problem.errors[0]?.path).toBe('/view');
      expect(problem.errors[0]?.remedy).toContain('half-open');
    },
  );

  test('a step that the folder does not have is answered with 404 and the number of steps', async () => {
    const problem = expectProblem(await ask('?view=step-17'), 404);
    expect(problem.detail).toBe('it is made in 16 steps, so there is no step-17');
    expect(problem.errors[0]?.remedy).toBe('use step-1 to step-16');
  });

  test('an unknown query member is refused by name', async () => {
    const problem = expectProblem(await ask('?veiw=inside'), 400);
    expect(problem.errors[0]).toMatchObject({ path: '/veiw', message: '"veiw" is not known here' });
  });

  test('what cannot be folded has no pictures', async () => {
    const problem = expectProblem(
      await ask('', { ...firstSpec, stock: { width: '60 mm', height: '80 mm' } }),
      422,
    );
    expect(problem.type).toBe('/problems/cannot-be-folded');
  });
});
