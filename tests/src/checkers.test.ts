import { describe, expect, test } from 'vitest';
import { expectProblem } from './expect-problem.ts';
import { consoleMethods, forgiveConsoleOutput } from './fail-on-console.ts';

describe('the checkers of these tests can fail', () => {
  const good = {
    statusCode: 404,
    headers: { 'content-type': 'application/problem+json' },
    body: '{"type":"about:blank","title":"Not Found","status":404,"detail":"no","errors":[]}',
  };

  test('expectProblem takes a good problem', () => {
    expect(expectProblem(good, 404).title).toBe('Not Found');
  });

  test.each([
    ['another status', { ...good, statusCode: 500 }],
    ['another media type', { ...good, headers: { 'content-type': 'application/json' } }],
    ['an entity tag', { ...good, headers: { ...good.headers, etag: '"x"' } }],
    ['a missing member', { ...good, body: good.body.replace('"detail":"no",', '') }],
    ['a status that differs inside', { ...good, body: good.body.replace('404', '400') }],
    ['a body that is not JSON', { ...good, body: '<html>' }],
  ])('expectProblem refuses %s', (_name, reply) => {
    expect(() => expectProblem(reply, 404)).toThrow();
  });

  test.each(consoleMethods)('console.%s is caught', (method) => {
    // biome-ignore lint/suspicious/noConsole: this shows that it is caught
    expect(() => console[method]('words')).toThrow('words');
    expect(forgiveConsoleOutput()).toEqual([method]);
  });
});
