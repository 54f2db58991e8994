import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findJsonFault } from '../../../src/problem/json-fault.ts';
import { readJson, UnreadableJson } from '../../../src/problem/read-json.ts';

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

const bytes = (text: string) => new TextEncoder().encode(text);

describe('findJsonFault', () => {
  test('finds none in any JSON text', () => {
    fc.assert(
      fc.property(fc.json(), fc.boolean(), (text, spread) => {
        const written = spread ? JSON.stringify(JSON.parse(text), null, 2) : text;
        expect(findJsonFault(written)).toBeUndefined();
      }),
    );
  });

  test('finds one exactly where JSON.parse does, whatever was cut out, doubled or put in', () => {
    const change = fc.record({
      text: fc.json({ maxDepth: 3 }),
      at: fc.nat(),
      cut: fc.nat({ max: 3 }),
      put: fc.constantFrom(
        '',
        ',',
        ':',
        '[',
        ']',
        '{',
        '}',
        '"',
        '\\',
        '0',
        '-',
        '.',
        'e',
        ' ',
        '\n',
        'NaN',
        '\u0001',
        'é',
      ),
    });
    let malformed = 0;
    fc.assert(
      fc.property(change, ({ text, at, cut, put }) => {
        const place = at % (text.length + 1);
        const changed = text.slice(0, place) + put + text.slice(place + cut);
        if (!parses(changed)) malformed += 1;
        expect(findJsonFault(changed) === undefined).toBe(parses(changed));
      }),
      { numRuns: 2_000 },
    );
    expect(malformed, 'texts that really were malformed').toBeGreaterThan(200);
  });

  test.each([
    ['', 1, 1, 'expected a value, but the text ends'],
    ['{"a" 1}', 1, 6, 'expected a colon'],
    [
      '{"a": 1,\n "b": 2,\n}',
      3,
      1,
      'expected a name in double quotes; JSON has no comma after the last entry',
    ],
    ['[1, 2', 1, 6, 'expected a comma or ], but the text ends'],
    ["{'a': 1}", 1, 2, 'expected a name in double quotes, or }; JSON quotes with " only'],
    ['{"a": NaN}', 1, 7, 'expected a value; JSON has no NaN'],
    ['{"a": Infinity}', 1, 7, 'expected a value; JSON has no Infinity'],
    ['{a: 1}', 1, 2, 'expected a name in double quotes, or }, not a'],
    ['{} // done', 1, 4, 'expected the end of the text; JSON has no comments'],
    ['{"a": "b}', 1, 7, 'expected a value; this text in quotes is not closed, or holds a bad escape'],
    ['{"a": 1} 2', 1, 10, 'expected the end of the text'],
  ])('says of %j: line %i, column %i', (text, line, column, message) => {
    expect(findJsonFault(text)).toEqual({ line, column, message });
  });
});

describe('readJson', () => {
  test('reads what JSON.parse reads, as long as it is safe', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        const text = JSON.stringify(value);
        if (!text.includes('__proto__')) expect(readJson(bytes(text))).toEqual(JSON.parse(text));
      }),
    );
  });

  test('reads 64 levels and refuses 65', () => {
    const nested = (levels: number) => bytes('['.repeat(levels) + ']'.repeat(levels));
    expect(() => readJson(nested(64))).not.toThrow();
    expect(() => readJson(nested(65))).toThrow('nested more than 64 deep');
  });

  test('names the place of a __proto__ member', () => {
    try {
      readJson(bytes('{"a":[{"__proto__":{}}]}'));
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(UnreadableJson);
      expect((error as UnreadableJson).errors[0]?.path).toBe('/a/0/__proto__');
    }
  });

  test('refuses a number that would become infinite', () => {
    expect(() => readJson(bytes('{"a":-1e999}'))).toThrow('too large');
  });

  test('refuses bytes that are not UTF-8', () => {
    expect(() => readJson(Uint8Array.of(0x22, 0xff, 0x22))).toThrow('not valid UTF-8');
  });
});
