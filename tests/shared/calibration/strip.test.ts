import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawStrip } from '../../../shared/calibration/draw-strip.ts';
import { showFoldFactor } from '../../../shared/calibration/show-fold-factor.ts';
import { stripMeasurement, stripSpec } from '../../../shared/calibration/strip-spec.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import { allowanceIn, foldFactorFrom } from '../../../shared/paper/fold-allowance.ts';

test('ten folds that lose half a caliper of 0.3 mm at both ends of each fold lose 3 mm (by hand)', () => {
  // 10 folds * 2 panel ends * 0.5 * 0.3 mm = 3 mm
  const measured = stripMeasurement.parse({
    units: 'mm',
    length: 220,
    measured: 217,
    scores: 10,
    caliper: 0.3,
  });
  expect(showFoldFactor(measured)).toEqual({ foldFactor: 0.5, believable: true });
  const odd = stripMeasurement.parse({ units: 'mm', length: 220, measured: 200, scores: 10, caliper: 0.3 });
  expect(showFoldFactor(odd).believable).toBe(false);
});

test('a strip that loses what the allowance says gives back the factor', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -20, max: 100 }),
      fc.integer({ min: 100, max: 500 }),
      fc.integer({ min: 2, max: 40 }),
      (hundredths, micrometres, scores) => {
        const caliper = micrometres * 1000;
        const factor = hundredths / 100;
        const { perEnd } = allowanceIn({ paper: { caliper }, foldFactor: factor }, 0);
        const drawn = mm(300);
        const found = foldFactorFrom({ drawn, measured: drawn - 2 * scores * perEnd, scores, caliper });
        expect(found).toBeCloseTo(factor, 4);
      },
    ),
  );
});

test('the strip has equal panels, and its scores are valleys and mountains in turn', () => {
  fc.assert(
    fc.property(fc.integer({ min: 50, max: 400 }), fc.integer({ min: 2, max: 40 }), (length, scores) => {
      const strip = drawStrip(stripSpec.parse({ units: 'mm', length, scores }));
      const places = (of: typeof strip.valleys) => of.map(({ points }) => points[0]?.x ?? Number.NaN);
      const panel = Math.floor(mm(length) / (scores + 1));
      const numbers = Array.from({ length: scores }, (_, index) => index + 1);
      expect(places(strip.valleys)).toEqual(numbers.filter((n) => n % 2 === 1).map((n) => n * panel));
      expect(places(strip.mountains)).toEqual(numbers.filter((n) => n % 2 === 0).map((n) => n * panel));
    }),
    { numRuns: 40 },
  );
});

test('the allowance enters where both ends lose more than half a grid step, and not before', () => {
  const sheet = { paper: { caliper: mm(0.3) }, foldFactor: 0.5 };
  // both ends lose 2 * 0.5 * 0.3 = 0.3 mm
  expect(allowanceIn(sheet, mm(0.59)).entered).toBe(mm(0.15));
  expect(allowanceIn(sheet, mm(0.6)).entered).toBe(0);
  expect(allowanceIn(sheet, 0).entered).toBe(mm(0.15));
});
