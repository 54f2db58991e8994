import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paperGrades } from '../../shared/paper/basis-weight.ts';
import {
  caliperFromBulk,
  caliperFromDensity,
  NM_PER_POINT,
  nmToPoints,
  pointsToNm,
} from '../../shared/paper/caliper.ts';
import { paperSorts, usualSortOfGrade, usualSortOfGrammage } from '../../shared/paper/usual-bulk.ts';

describe('caliper', () => {
  it('points and nanometres are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.nat(1000), (points) => {
        expect(nmToPoints(pointsToNm(points))).toBe(points);
        expect(pointsToNm(points)).toBe(points * NM_PER_POINT);
      }),
    );
  });

  it('bulk and density are each other’s inverse, and both give whole nanometres', () => {
    const gram = fc.double({ min: 5, max: 2000, noNaN: true });
    const bulk = fc.double({ min: 0.3, max: 5, noNaN: true });
    fc.assert(
      fc.property(gram, bulk, (grammage, bulk) => {
        const caliper = caliperFromBulk(grammage, bulk);
        expect(Number.isSafeInteger(caliper)).toBe(true);
        expect(Math.abs(caliperFromDensity(grammage, 1 / bulk) - caliper)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('150 g/m² at 0.75 g/cm³ is 200 µm', () => {
    expect(caliperFromDensity(150, 0.75)).toBe(200_000);
  });
});

describe('the usual bulk', () => {
  it('is known for every grade, names its source and is that of a paper', () => {
    for (const grade of paperGrades) expect(Object.values(paperSorts)).toContain(usualSortOfGrade(grade));
    for (const sort of Object.values(paperSorts)) {
      expect(sort.source).toMatch(/JCP|common practice/u);
      expect(sort.bulk).toBeGreaterThanOrEqual(0.8);
      expect(sort.bulk).toBeLessThanOrEqual(1.6);
    }
  });

  it('takes 150 g/m² and more for card', () => {
    expect(usualSortOfGrammage(149.9)).toBe(paperSorts.text);
    expect(usualSortOfGrammage(150)).toBe(paperSorts.card);
  });
});
