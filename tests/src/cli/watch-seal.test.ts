import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  digestOf,
  readDrawingSeal,
  readProblemSeal,
  sealDrawing,
  sealProblem,
} from '../../../src/cli/watch/seal.ts';

const svg = '<?xml version="1.0" encoding="UTF-8"?>\n<svg><title>Twin sleeve</title></svg>\n';
const spec = digestOf('{}');

/** A text with one character taken out or put in. */
const slip = (text: string) =>
  fc
    .record({ at: fc.nat({ max: text.length - 1 }), put: fc.constantFrom('', 'x', ' ', '\n') })
    .map(({ at, put }) => text.slice(0, at) + put + text.slice(put === '' ? at + 1 : at))
    .filter((changed) => changed !== text);

// FIPS 180-4, the example of SHA-256 for "abc": ba7816bf 8f01cfea 414140de 5dae2223 …; from memory
test('a digest is the first half of SHA-256', () => {
  expect(digestOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223');
});

describe('the seal of a drawing', () => {
  const sealed = sealDrawing(svg, spec);

  test('is a comment on the second line, and nothing else is touched', () => {
    const [declaration, comment, ...rest] = sealed.split('\n');
    expect(comment).toMatch(/^<!-- (?:(?!--).)* -->$/); // XML 1.0 section 2.5: no -- inside
    expect([declaration, ...rest].join('\n')).toBe(svg);
  });

  test('names the spec, and is missing from any other file', () => {
    expect(readDrawingSeal(sealed)).toEqual({ spec });
    for (const text of ['', '\n', svg, sealed.slice(0, 90)]) expect(readDrawingSeal(text)).toBeUndefined();
  });

  test('is broken by any change of the drawing', () => {
    const words = sealed.split('\n')[1] ?? '';
    fc.assert(
      fc.property(slip(svg), (changed) => {
        fc.pre(changed.includes('\n'));
        const at = changed.indexOf('\n') + 1;
        const text = `${changed.slice(0, at)}${words}\n${changed.slice(at)}`;
        expect(readDrawingSeal(text)).toBeUndefined();
      }),
    );
  });
});

describe('the seal of a problem text', () => {
  const text = 'card.json: not drawn.\n\nThe input is not valid\n';
  const sealed = sealProblem(text);

  test('is its last line', () => {
    expect(sealed.startsWith(text)).toBe(true);
    expect(readProblemSeal(sealed)).toBe(digestOf(text));
    for (const other of ['', text, `${sealed}My own note\n`]) expect(readProblemSeal(other)).toBeUndefined();
  });

  test('is broken by any change of the text', () => {
    fc.assert(
      fc.property(slip(text), (changed) => {
        expect(readProblemSeal(changed + sealed.slice(text.length))).toBeUndefined();
      }),
    );
  });
});
