import { describe, expect, it } from 'vitest';
import {
  inch,
  mm,
  NM_PER_CM,
  NM_PER_INCH,
  NM_PER_INCH_64TH,
  NM_PER_MM,
} from '../../shared/lengths/nanometres.ts';
import { parseLength, toNanometres } from '../../shared/lengths/parse-length.ts';

const read = (text: string): number => {
  const parsed = parseLength(text);
  const settled = parsed.ok ? toNanometres(parsed.value, 'mm') : parsed;
  return settled.ok ? settled.value : Number.NaN;
};

describe('units', () => {
  it('36 in is 0.9144 m exactly (NBS Circular 572 addendum, January 1960)', () => {
    expect(36 * NM_PER_INCH).toBe(914_400_000);
  });

  it('1 in = 2.54 cm = 25.4 mm, 1 mm = 1/10 cm (CSS Values and Units 3, "Absolute Lengths")', () => {
    expect(NM_PER_INCH).toBe(25_400_000);
    expect(NM_PER_INCH).toBe(mm(25.4));
    expect(NM_PER_CM).toBe(10 * NM_PER_MM);
    expect(read('1 in')).toBe(read('2.54 cm'));
    expect(read('1 in')).toBe(read('25.4 mm'));
  });

  it('12 in is 304.8 mm, not 305 and not 300', () => {
    expect(read('12 in')).toBe(mm(304.8));
    expect(read('12 in')).not.toBe(mm(305));
    expect(inch(12)).toBe(304_800_000);
  });

  it('1/64 in is a whole number of nanometres: 25 400 000 / 64 = 396 875', () => {
    expect(NM_PER_INCH_64TH).toBe(396_875);
  });

  it('A4 in inches is 8.27 x 11.69, as printed beside it everywhere (from memory)', () => {
    expect(Math.abs(read('8.27 in') - mm(210))).toBeLessThan(inch(0.005));
    expect(Math.abs(read('11.69 in') - mm(297))).toBeLessThan(inch(0.005));
  });
});
