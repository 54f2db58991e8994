import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST, mm } from '../../shared/lengths/nanometres.ts';
import {
  numberToNanometres,
  parseLength,
  toNanometres,
  type UnitName,
  unitNames,
} from '../../shared/lengths/parse-length.ts';

/** Reads and settles in one go, as a spec does. */
const read = (text: string, unit: UnitName = 'mm') => {
  const parsed = parseLength(text);
  return parsed.ok ? toNanometres(parsed.value, unit) : parsed;
};

const nm = (value: number) => ({ ok: true, value });

describe('a length is read as makers write it', () => {
  // Worked by hand: 1 in = 25 400 000 nm, 1/8 in = 3 175 000 nm, 1/64 in = 396 875 nm.
  it.each([
    ['130 mm', 130_000_000],
    ['130mm', 130_000_000],
    ['  130   mm  ', 130_000_000],
    ['130 MM', 130_000_000],
    ['0.01 mm', 10_000],
    ['.5 mm', 500_000],
    ['007 mm', 7_000_000],
    ['0 mm', 0],
    ['13 cm', 130_000_000],
    ['2.54 cm', 25_400_000],
    ['1 in', 25_400_000],
    ['1 inch', 25_400_000],
    ['2 inches', 50_800_000],
    ['2 Inches', 50_800_000],
    ['1"', 25_400_000],
    ['1 "', 25_400_000],
    ['1″', 25_400_000], // U+2033 double prime
    ['1”', 25_400_000], // U+201D, what a word processor makes of the inch sign
    ["1''", 25_400_000],
    ['5 1/8 in', 130_175_000], // 127 000 000 + 3 175 000
    ['5.125in', 130_175_000],
    ['5-1/8"', 130_175_000],
    ['5 ⅛ in', 130_175_000],
    ['5⅛"', 130_175_000],
    ['5-⅛"', 130_175_000],
    ['5 1⁄8 in', 130_175_000], // U+2044 fraction slash
    ['5 1 / 8 in', 130_175_000],
    ['5\u00a01/8\u00a0in', 130_175_000], // no-break spaces
    ['41/8 in', 130_175_000],
    ['1/64 in', 396_875],
    ['⅞ in', 22_225_000], // 7 x 3 175 000
    ['½ mm', 500_000],
    ['4 10/8 in', 133_350_000], // 42 x 3 175 000
    ['10000 mm', LONGEST],
  ])('%s is %d nm', (text, expected) => {
    expect(read(text)).toEqual(nm(expected));
  });

  it.each([
    ['mm', 5_125_000],
    ['cm', 51_250_000],
    ['in', 130_175_000],
  ] as const)('"5.125" takes the unit that it is settled in: %s', (unit, expected) => {
    expect(read('5.125', unit)).toEqual(nm(expected));
  });

  it('a unit of its own outweighs the one that it is settled in', () => {
    expect(read('1 in', 'mm')).toEqual(nm(25_400_000));
  });
});

describe('a length is refused with what to write instead', () => {
  const example = 'write it like "5 1/8 in", "5.125 in", "130 mm" or "13 cm"';
  const units = 'use mm, cm, in or the inch sign';
  const positive = 'give a length greater than zero';
  const exponent = 'write the number out, since exponents are not read';
  const comma = 'write the decimal mark as a point and no thousands marks';

  it.each([
    ['', 'the length is empty', example],
    ['   ', 'the length is empty', example],
    ['mm', '"mm" is not a length', example],
    ['wide', '"wide" is not a length', example],
    ['-5 mm', '"-5 mm" is negative', positive],
    ['−5 mm', '"−5 mm" is negative', positive], // U+2212 minus
    ['1,5 mm', '"1,5 mm" has a comma', comma],
    ['1,000 mm', '"1,000 mm" has a comma', comma],
    ['5 ft', '"ft" is not a unit that hemfold reads', units],
    ['5 m', '"m" is not a unit that hemfold reads', units],
    ["5'", '"\'" is not a unit that hemfold reads', units],
    ['5 px', '"px" is not a unit that hemfold reads', units],
    ['5 mm 2', '"mm 2" is not a unit that hemfold reads', units],
    ['1e3 mm', '"1e3 mm" has an exponent', exponent],
    ['1.5E-2in', '"1.5E-2in" has an exponent', exponent],
    ['2e+1', '"2e+1" has an exponent', exponent],
    ['5 e3', '"e3" is not a unit that hemfold reads', units],
    ['5 em', '"em" is not a unit that hemfold reads', units],
    ['5 constructor', '"constructor" is not a unit that hemfold reads', units],
    ['5 __proto__', '"__proto__" is not a unit that hemfold reads', units],
    ['1/0 in', '"1/0 in" divides by zero', example],
    ['5 1/8 1/8 in', '"5 1/8 1/8 in" is not a length', example],
    ['5 6 in', '"5 6 in" is not a length', example],
    ['5.5 1/2 in', '"5.5 1/2 in" is not a length', example],
    ['1.5/2 in', '"1.5/2 in" is not a length', example],
    ['5. mm', '"5. mm" is not a length', example],
    ['1.2.3 mm', '"1.2.3 mm" is not a length', example],
    ['5--1/8 in', '"5--1/8 in" is not a length', example],
    ['5 - 1/8 in', '"5 - 1/8 in" is not a length', example], // mixed number, or a subtraction?
    ['5 -1/8 in', '"5 -1/8 in" is not a length', example],
    ['½8 in', '"½8 in" is not a length', example], // not 1/28
    ['½½ in', '"½½ in" is not a length', example],
    ['≈ 1 3/4 in', '"≈ 1 3/4 in" is not a length', example], // a rounded reply is no input
    ['10000.001 mm', 'the length is more than 10 m', 'give a length that a sheet of paper can have'],
    ['394 in', 'the length is more than 10 m', 'give a length that a sheet of paper can have'],
    ['999999999999999 cm', 'the length is more than 10 m', 'give a length that a sheet of paper can have'],
  ])('%j', (text, message, remedy) => {
    expect(read(text)).toEqual({ ok: false, message, remedy });
  });

  it('64 characters may be a length, 65 are too long for one, and the message quotes only 40', () => {
    expect(read(`${' '.repeat(60)}5 mm`)).toEqual(nm(5_000_000));
    expect(read(`${' '.repeat(61)}5 mm`)).toMatchObject({ ok: false });
    expect(read('7'.repeat(65))).toMatchObject({
      ok: false,
      message: `"${'7'.repeat(40)}…" is too long to be a length`,
    });
  });
});

describe('a length is exact', () => {
  it.each([
    ['1/3 in', 8_466_667], // 25 400 000 / 3 = 8 466 666.67
    ['0.333333333333333 in', 8_466_667],
    ['2/3 in', 16_933_333],
    ['0.0000005 mm', 1], // half a nanometre: halves go up
    ['0.00000049999999999 mm', 0],
    ['1.000000499999999999999999 mm', 1_000_000], // as a float this is 1.0000005
    ['999999999999998/999999999999999 in', 25_400_000],
    ['250000000000000/999999999999999 in', 6_350_000],
    ['1/50800000 in', 1], // half a nanometre
    ['1/50800001 in', 0],
    ['9999999999999/99999999999 mm', 100_000_000], // numerator x scale is far beyond 2^53
  ])('%s is %d nm', (text, expected) => {
    expect(read(text)).toEqual(nm(expected));
  });

  it('the digits that a float would lose count', () => {
    expect(Math.round(Number('1.000000499999999999999999') * 1_000_000)).not.toBe(1_000_000);
  });

  it('a fraction of 64ths and its decimals are the same length', () => {
    fc.assert(
      fc.property(fc.nat(25_000), (sixtyFourths) => {
        const decimals = read(`${sixtyFourths / 64} in`);
        expect(read(`${sixtyFourths}/64 in`)).toEqual(decimals);
        expect(read(`${Math.floor(sixtyFourths / 64)} ${sixtyFourths % 64}/64 in`)).toEqual(decimals);
        expect(read(`${Math.floor(sixtyFourths / 64)}-${sixtyFourths % 64}/64"`)).toEqual(decimals);
        expect(decimals).toEqual(nm(sixtyFourths * 396_875));
      }),
    );
  });

  it('the same length in cm and mm is the same', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), (hundredths) => {
        const text = (hundredths / 100).toFixed(2);
        expect(read(`${text} mm`)).toEqual(nm(hundredths * 10_000));
        expect(read(`${(hundredths / 1000).toFixed(3)} cm`)).toEqual(read(`${text} mm`));
      }),
    );
  });

  it('any number that a script prints is read, with every digit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.000001, max: 9_999, noNaN: true }), (value) => {
        const settled = read(`${value} mm`);
        expect(settled.ok && Math.abs(settled.value - mm(value))).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('unicode fractions', () => {
  // The Unicode standard's vulgar fractions with their values.
  const signs: readonly (readonly [string, string])[] = [
    ['¼', '1/4'],
    ['½', '1/2'],
    ['¾', '3/4'],
    ['⅐', '1/7'],
    ['⅑', '1/9'],
    ['⅒', '1/10'],
    ['⅓', '1/3'],
    ['⅔', '2/3'],
    ['⅕', '1/5'],
    ['⅖', '2/5'],
    ['⅗', '3/5'],
    ['⅘', '4/5'],
    ['⅙', '1/6'],
    ['⅚', '5/6'],
    ['⅛', '1/8'],
    ['⅜', '3/8'],
    ['⅝', '5/8'],
    ['⅞', '7/8'],
    ['↉', '0/3'],
  ];

  it.each(signs)('%s is %s', (sign, ascii) => {
    for (const unit of unitNames) {
      expect(read(`${sign} ${unit}`)).toEqual(read(`${ascii} ${unit}`));
      expect(read(`12${sign}${unit}`)).toEqual(read(`12 ${ascii} ${unit}`));
      expect(read(`12 ${sign} ${unit}`)).toEqual(read(`12 ${ascii} ${unit}`));
      expect(read(`12-${sign} ${unit}`)).toEqual(read(`12 ${ascii} ${unit}`));
    }
    expect(read(`${sign} in`).ok).toBe(true);
  });
});

describe('for any text whatever', () => {
  const pieces = fc
    .array(
      fc
        .constantFrom('0', '1', '25', '9'.repeat(15), '.', ',', '/', '⁄', '-', ' ', '\n', '½', '⅛')
        .chain((piece) => fc.constantFrom(piece, ` ${piece}`)),
      { maxLength: 12 },
    )
    .map((parts) => parts.join(''));
  const words = fc.constantFrom('mm', 'cm', 'in', '"', '″', 'IN', '', 'constructor', '__proto__', 'toString');
  const anyText = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 80 }),
    fc.tuple(pieces, words).map(([digits, word]) => `${digits} ${word}`),
  );

  it('reading never throws and gives whole nanometres up to 10 m, or a message and a remedy', () => {
    let lengths = 0;
    fc.assert(
      fc.property(anyText, fc.constantFrom(...unitNames), (text, unit) => {
        const settled = read(text, unit);
        if (settled.ok) {
          lengths += 1;
          expect(Number.isSafeInteger(settled.value)).toBe(true);
          expect(settled.value).toBeGreaterThanOrEqual(0);
          expect(settled.value).toBeLessThanOrEqual(LONGEST);
        } else {
          expect(settled.message.length).toBeGreaterThan(0);
          expect(settled.remedy.length).toBeGreaterThan(0);
          expect(settled.message.length).toBeLessThan(500);
        }
      }),
      { numRuns: 2000 },
    );
    expect(lengths).toBeGreaterThan(0);
  });
});

describe('a bare number', () => {
  it.each([
    [130, 'mm', 130_000_000],
    [13, 'cm', 130_000_000],
    [5.125, 'in', 130_175_000],
    [0.1, 'in', 2_540_000],
    [0, 'mm', 0],
  ] as const)('%d %s is %d nm', (value, unit, expected) => {
    expect(numberToNanometres(value, unit)).toEqual(nm(expected));
  });

  it.each([
    [-1, 'the length is negative'],
    [10_001, 'the length is more than 10 m'],
    [Number.MAX_VALUE, 'the length is more than 10 m'],
    [Number.POSITIVE_INFINITY, 'the length is more than 10 m'],
  ])('%d mm is refused: %s', (value, message) => {
    expect(numberToNanometres(value, 'mm')).toMatchObject({ ok: false, message });
  });

  it('is the length that its decimals are', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.constantFrom(...unitNames), (hundredths, unit) => {
        const value = hundredths / 100;
        expect(numberToNanometres(value, unit)).toEqual(read(value.toFixed(2), unit));
      }),
    );
  });
});
