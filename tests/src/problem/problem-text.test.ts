import fc from 'fast-check';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { CannotBeFolded } from '../../../src/problem/cannot-be-folded.ts';
import { HttpProblem } from '../../../src/problem/http-problem.ts';
import { problemFromInput } from '../../../src/problem/problem-from.ts';
import { problemText } from '../../../src/problem/problem-text.ts';
import { readJson } from '../../../src/problem/read-json.ts';
import { readWith } from '../../../src/problem/read-with.ts';
import { goodProbe, probeSpec } from '../probe-app.ts';

function textOf(fail: () => unknown): string {
  try {
    fail();
  } catch (error) {
    const problem = problemFromInput(error);
    if (problem) return problemText(problem);
    throw error;
  }
  throw new Error('nothing was refused');
}

test('an invalid spec: each fault with its place, and its remedy below', () => {
  expect(textOf(() => readWith(probeSpec, { ...goodProbe, style: 'tal', count: 0 }))).toBe(
    [
      'The input is not valid',
      '  /style: "tal" is not known here',
      '    did you mean "tall"? known here: flat, tall',
      '  /count: 0 is too small: it must be 1 or more',
      '',
    ].join('\n'),
  );
});

test('malformed JSON: one line, and the remedy', () => {
  expect(textOf(() => readJson(new TextEncoder().encode('{')))).toBe(
    [
      'the JSON is malformed at line 1, column 2: expected a name in double quotes, or }, but the text ends',
      '    mend the text so that it is valid JSON (RFC 8259)',
      '',
    ].join('\n'),
  );
});

test('a refusal: the reason, the faults, and what would help', () => {
  const refuse = () => {
    throw new CannotBeFolded({
      message: 'The sheet is 12 mm too narrow.',
      errors: [{ path: '/stock', message: '12 mm too narrow' }],
      remedies: [{ message: 'use the next larger sheet' }, 'turn the card', { op: 'add' }],
    });
  };
  expect(textOf(refuse)).toBe(
    [
      'This cannot be made: The sheet is 12 mm too narrow.',
      '  /stock: 12 mm too narrow',
      'What would help:',
      '  - use the next larger sheet',
      '  - turn the card',
      '  - {"op":"add"}',
      '',
    ].join('\n'),
  );
});

test('a refusal whose detail is a fault says it once, at its places, and each remedy once', () => {
  const long = 'The sheet is 12 mm too narrow.';
  const errors = [
    { path: '/stock/0', message: long, remedy: 'use a wider sheet' },
    { path: '/stock/1', message: 'The sheet is 3 mm too low.', remedy: 'use a wider sheet' },
    { path: '/stock/2', message: long, remedy: 'use a wider sheet' },
    { path: '/grid', message: 'too coarse', remedy: 'leave the grid out' },
  ];
  const refuse = () => {
    throw new CannotBeFolded({ message: long, errors, remedies: [{ message: 'use a wider sheet' }] });
  };
  expect(textOf(refuse)).toBe(
    [
      'This cannot be made',
      '  /stock/0, /stock/2: The sheet is 12 mm too narrow.',
      '  /stock/1: The sheet is 3 mm too low.',
      '  /grid: too coarse',
      '    leave the grid out',
      'What would help:',
      '  - use a wider sheet',
      '',
    ].join('\n'),
  );
});

test('a plain problem says its detail once, at its place', () => {
  const fail = () => {
    throw new HttpProblem(404, 'there is no step-40', [
      { path: '/view', message: 'there is no step-40', remedy: 'use step-1' },
    ]);
  };
  expect(textOf(fail)).toBe('/view: there is no step-40\n    use step-1\n');
});

test('neighbours with one remedy have it below the last of them', () => {
  expect(textOf(() => readWith(z.strictObject({ hem: z.number() }), { hem: 1, x: 1, y: 1, hme: 1 }))).toBe(
    [
      'The input is not valid',
      '  /x: "x" is not known here',
      '  /y: "y" is not known here',
      '    known here: hem',
      '  /hme: "hme" is not known here',
      '    did you mean "hem"? known here: hem',
      '',
    ].join('\n'),
  );
});

test('whatever is refused, every word of it is said, and no line twice', () => {
  const words = fc.constantFrom('a', 'b', 'c', 'd');
  const errors = fc.array(
    fc.record(
      { path: fc.constantFrom('', '/x', '/y'), message: words, remedy: fc.constantFrom('e', 'f', 'g') },
      { requiredKeys: ['path', 'message'] },
    ),
    { maxLength: 6 },
  );
  const remedies = fc.array(fc.constantFrom('f', 'g', 'h'), { maxLength: 3 });
  fc.assert(
    fc.property(words, errors, remedies, (message, faults, help) => {
      const text = textOf(() => {
        throw new CannotBeFolded({ message, errors: faults, remedies: help });
      });
      const said = text.split(/[\s:,-]+/u);
      const all = [message, ...help, ...faults.flatMap((fault) => Object.values(fault))];
      for (const word of all.filter((each) => each !== '')) expect(said).toContain(word);
      const lines = text.split('\n').filter((line) => /^ {2}\S/u.test(line));
      const listed: readonly string[] = help;
      const stated = faults.filter(({ remedy }) => remedy === undefined || listed.includes(remedy));
      // remedies of their own keep faults apart
      if (stated.length === faults.length) expect(new Set(lines).size).toBe(lines.length);
    }),
  );
});
