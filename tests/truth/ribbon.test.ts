import { describe, expect, test } from 'vitest';
import { inch, mm } from '../../shared/lengths/nanometres.ts';
import { bowLength, ribbonLength, smallBow, wrapLength } from '../../shared/ribbon/ribbon.ts';

/*
 * NRICH, University of Cambridge, on tying a parcel: once around is 2(W + T); both ways crossed is
 * 2(W + T) + 2(H + T).
 */
describe('around a parcel', () => {
  const box = { width: mm(100), height: mm(150), thickness: mm(12) };
  test.each([
    ['around the width', 2 * (100 + 12)],
    ['around the height', 2 * (150 + 12)],
    ['crossed', 2 * (100 + 12) + 2 * (150 + 12)],
  ] as const)('%s', (tie, expected) => {
    expect(wrapLength(box, tie)).toBe(mm(expected));
  });
});

test('a bow of 60 mm loops and 80 mm tails in 10 mm ribbon takes 460 mm (common practice)', () => {
  expect(bowLength({ loop: mm(60), tail: mm(80), ribbon: mm(10) })).toBe(mm(460));
});

test('a closed folder of 4 × 5 3/4 × 1/2 in, tied once with a small bow, stays within 24 in (common practice, no published source)', () => {
  const folder = { width: inch(4), height: inch(5.75), thickness: inch(0.5) };
  const length = ribbonLength(folder, 'around the width', smallBow);
  expect(length).toBeLessThanOrEqual(inch(24));
  expect(length).toBeGreaterThan(inch(18));
});
