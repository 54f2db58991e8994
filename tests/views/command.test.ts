import { describe, expect, test } from 'vitest';
import { firstSpec } from '../../src/cli/first-spec.ts';
import { build } from '../src/build.ts';
import { runHemfold } from '../src/run-program.ts';

const input = JSON.stringify(firstSpec);

describe('hemfold views', () => {
  test.each([
    ['all', []],
    ['half-open', ['--view', 'half-open']],
  ])('writes what the service answers for %s', async (view, words) => {
    const { code, output, errors } = await runHemfold(['views', '-', ...words], { input });
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    const app = await build();
    const reply = await app.inject({
      method: 'POST',
      url: `/v1/folders/views?view=${view}`,
      payload: firstSpec,
    });
    expect(output).toBe(reply.body);
  });

  test('refuses a view that it does not know with 2, and names the nearest', async () => {
    const { code, output, errors } = await runHemfold(['views', '-', '--view', 'outsid'], { input });
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain('did you mean "outside"?');
  });

  test('refuses a step that the folder does not have with 2', async () => {
    const { code, errors } = await runHemfold(['views', '-', '--view', 'step-99'], { input });
    expect(code).toBe(2);
    expect(errors).toContain('use step-1 to step-16');
  });

  test('--help names the option and its default', async () => {
    const { output } = await runHemfold(['views', '--help']);
    expect(output).toMatch(/--view <view> .*half-open/s);
    expect(output).toContain('(default: "all")');
  });
});
