import { describe, expect, test } from 'vitest';
import { convention } from '../../shared/drawing/convention.ts';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

const messages = (input: unknown) => convention.safeParse(input).error?.issues.map(({ message }) => message);

describe('a convention', () => {
  test('by a name that stands for nothing is refused in words that say what to give', async () => {
    const app = await build();
    const payload = { ...firstSpec, convention: 'my-cutter' };
    const problem = expectProblem(await app.inject({ method: 'POST', url: '/v1/folders/svg', payload }), 400);
    expect(problem.errors).toEqual([
      {
        path: '/convention',
        message: 'nothing is kept under the name "my-cutter" here',
        remedy: 'give the convention itself, or keep one under that name with PUT /v1/conventions/{name}',
      },
    ]);
  });

  test('of another kind, or with an unknown member, is refused in other words', async () => {
    const app = await build();
    const said = async (given: unknown) => {
      const payload = { ...firstSpec, convention: given };
      const reply = await app.inject({ method: 'POST', url: '/v1/folders/svg', payload });
      return expectProblem(reply, 400).errors[0]?.message;
    };
    expect(await said([])).toBe('expected an object or a string');
    expect(await said({ rootUnits: 'mm' })).toBe('"rootUnits" is not known here');
  });

  test('itself is read', () => {
    expect(messages({})).toBeUndefined();
  });
});
