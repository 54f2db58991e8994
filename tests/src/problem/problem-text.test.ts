import { expect, test } from 'vitest';
import { CannotBeFolded } from '../../../src/problem/cannot-be-folded.ts';
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
      'The spec is not valid',
      '  /style: "tal" is not known here',
      '    did you mean "tall"? known here: flat, tall',
      '  /count: expected number to be >=1',
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
      'The spec cannot be folded: The sheet is 12 mm too narrow.',
      '  /stock: 12 mm too narrow',
      'What would help:',
      '  - use the next larger sheet',
      '  - turn the card',
      '  - {"op":"add"}',
      '',
    ].join('\n'),
  );
});
