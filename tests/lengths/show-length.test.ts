import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST, mm, NM_PER_INCH_64TH } from '../../shared/lengths/nanometres.ts';
import { parseLength, toNanometres } from '../../shared/lengths/parse-length.ts';
import {
  areaMm2,
  describeLength,
  inInches,
  inMm,
  showLength,
  writeLength,
} from '../../shared/lengths/show-length.ts';

/** Fails as NaN where the text has no unit of its own. */
const read = (text: string): number => {
  const parsed = parseLength(text);
  if (!parsed.ok || parsed.value.unit === undefined) return Number.NaN;
  const settled = toNanometres(parsed.value, 'mm');
  return settled.ok ? settled.value : Number.NaN;
};

describe('inches as makers read them', () => {
  it.each([
    [0, '0'],
    [396_875, '1/64'],
    [1_587_500, '1/16'],
    [12_700_000, '1/2'],
    [25_400_000, '1'],
    [44_450_000, '1 3/4'],
    [304_800_000, '12'],
    [-44_450_000, '-1 3/4'],
  ])('%d nm is %s', (length, shown) => {
    expect(inInches(length)).toBe(shown);
  });

  it.each([
    [44_450_001, '≈ 1 3/4'],
    [44_449_999, '≈ 1 3/4'],
    [130_000_000, '≈ 5 1/8'], // 5.1181 in = 327.56 / 64, nearest 328 / 64
    [100_000_000, '≈ 3 15/16'], // 3.9370 in = 251.97 / 64, nearest 252 / 64
    [25_300_000, '≈ 1'], // 63.75 / 64 carries into the whole inch
    [100_000, '≈ 0'],
    [-130_000_000, '≈ -5 1/8'],
  ])('%d nm is no whole number of 64ths: %s', (length, shown) => {
    expect(inInches(length)).toBe(shown);
  });

  it('says ≈ exactly where the length is no whole number of 64ths, and is at most half a 64th off', () => {
    // Within a 64th of 10 m the nearest one lies beyond what is read back.
    fc.assert(
      fc.property(fc.nat(LONGEST - NM_PER_INCH_64TH), (length) => {
        const shown = inInches(length);
        expect(shown.startsWith('≈ ')).toBe(length % NM_PER_INCH_64TH !== 0);
        expect(Math.abs(read(`${shown.replace('≈ ', '')} in`) - length)).toBeLessThanOrEqual(
          NM_PER_INCH_64TH / 2,
        );
      }),
    );
  });
});

describe('what is shown is read back as the same length', () => {
  it('every multiple of 1/64 in up to 10 m, in inches and in millimetres', () => {
    const wrong: number[] = [];
    for (let length = 0; length <= LONGEST; length += NM_PER_INCH_64TH) {
      if (read(writeLength(length, 'inch')) !== length) wrong.push(length);
      if (read(`${inInches(length)} in`) !== length) wrong.push(length);
      if (read(`${inMm(length)} mm`) !== length) wrong.push(length);
    }
    expect(wrong).toEqual([]);
  });

  it('every 0.01 mm up to 1 m, and any up to 10 m', () => {
    const back = (hundredths: number) => read(writeLength(hundredths * 10_000, 'metric'));
    const wrong: number[] = [];
    for (let hundredths = 0; hundredths <= 100_000; hundredths++)
      if (back(hundredths) !== hundredths * 10_000) wrong.push(hundredths);
    expect(wrong).toEqual([]);
    fc.assert(
      fc.property(fc.nat(1_000_000), (hundredths) => {
        expect(back(hundredths)).toBe(hundredths * 10_000);
      }),
    );
  });

  it('any whole number of nanometres, whichever system it is written in', () => {
    fc.assert(
      fc.property(fc.nat(LONGEST), fc.constantFrom('metric', 'inch'), (length, measure) => {
        expect(read(writeLength(length, measure))).toBe(length);
      }),
    );
  });

  it('would notice a rounded length: 130 mm is not its nearest 64th', () => {
    expect(read(`${inInches(mm(130)).replace('≈ ', '')} in`)).not.toBe(mm(130));
  });
});

describe('lengths in replies and sentences', () => {
  it('a reply has both', () => {
    expect(showLength(44_450_000)).toEqual({ mm: 44.45, inch: '1 3/4' });
    expect(showLength(130_000_000)).toEqual({ mm: 130, inch: '≈ 5 1/8' });
  });

  it('a sentence has the asked one first, millimetres to two decimals', () => {
    expect(describeLength(44_450_000, 'metric')).toBe('44.45 mm (1 3/4 in)');
    expect(describeLength(44_450_000, 'inch')).toBe('1 3/4 in (44.45 mm)');
    expect(describeLength(396_875, 'metric')).toBe('0.4 mm (1/64 in)');
  });

  it('a spec is written in inches only where that is exact', () => {
    expect(writeLength(44_450_000, 'inch')).toBe('1 3/4 in');
    expect(writeLength(44_450_000, 'metric')).toBe('44.45 mm');
    expect(writeLength(130_000_000, 'inch')).toBe('130 mm');
    expect(writeLength(1, 'inch')).toBe('0.000001 mm');
  });

  it('an area is in square millimetres', () => {
    expect(areaMm2(mm(210), mm(297))).toBe(62_370);
  });
});
