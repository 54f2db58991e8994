import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  basicSizes,
  basisWeight,
  grammageOf,
  paperGrades,
  poundsOf,
} from '../../shared/paper/basis-weight.ts';

describe('basis weight', () => {
  it('to grammage and back is the same weight', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.constantFrom(...paperGrades),
        (pounds, grade) => {
          expect(Math.abs(poundsOf(grammageOf({ pounds, grade }), grade) / pounds - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('is heavier paper on a smaller basic size, pound for pound', () => {
    const areas = (grade: (typeof paperGrades)[number]) => basicSizes[grade][0] * basicSizes[grade][1];
    const bySize = paperGrades.toSorted((one, other) => areas(one) - areas(other));
    const weights = bySize.map((grade) => grammageOf({ pounds: 50, grade }));
    expect(weights).toEqual(weights.toSorted((one, other) => other - one));
    expect(bySize[0]).toBe('bond');
  });

  it('is read with its grade, and with nothing else', () => {
    expect(basisWeight.parse({ pounds: 65, grade: 'cover' })).toEqual({ pounds: 65, grade: 'cover' });
  });

  it.each([
    [{ pounds: 65 }],
    [{ grade: 'cover' }],
    [{ pounds: 65, grade: 'card' }],
    [{ pounds: 65, grade: 'constructor' }],
    [{ pounds: 0, grade: 'cover' }],
    [{ pounds: 1001, grade: 'cover' }],
    [{ pounds: '65', grade: 'cover' }],
    [{ pounds: Number.NaN, grade: 'cover' }],
    [{ pounds: 65, grade: 'cover', sheets: 500 }],
    ['65 lb cover'],
  ])('%j is refused', (input) => {
    expect(basisWeight.safeParse(input).success).toBe(false);
  });
});
