import { describe, expect, it } from 'vitest';
import { nmToPoints, pointsToNm } from '../../shared/paper/caliper.ts';
import { caliperOf } from '../../shared/paper/paper-thickness.ts';

describe('caliper', () => {
  it('is grammage times bulk: 200 g/m² at 1.15 cm³/g is 230 µm, as JCP K10 gives 110 lb index', () => {
    // ISO 534: apparent specific volume is thickness / grammage. 200 x 1.15 = 230 µm = 230 000 nm.
    expect(caliperOf({ grammage: 200, bulk: 1.15 }).caliper).toBe(230_000);
  });

  it('a point is a thousandth of an inch: 25.4 µm, and 10 pt is 0.254 mm', () => {
    expect(pointsToNm(1)).toBe(25_400);
    expect(pointsToNm(10)).toBe(254_000);
    expect(nmToPoints(304_800)).toBe(12);
  });

  // Starting values for cover paper, in mm, by grammage: from memory, common practice.
  it.each([
    [216, 0.26, 0.3],
    [270, 0.33, 0.36],
    [298, 0.36, 0.4],
  ])('card of %d g/m² is usually between %d and %d mm', (grammage, least, most) => {
    const { caliper } = caliperOf({ grammage });
    expect(caliper).toBeGreaterThanOrEqual(least * 1_000_000);
    expect(caliper).toBeLessThanOrEqual(most * 1_000_000);
  });
});
