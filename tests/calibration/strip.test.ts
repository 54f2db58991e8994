import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawStrip } from '../../shared/calibration/draw-strip.ts';
import { showFoldFactor } from '../../shared/calibration/show-fold-factor.ts';
import { stripMeasurement, stripSpec } from '../../shared/calibration/strip-spec.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { allowanceIn, foldFactorFrom } from '../../shared/paper/fold-allowance.ts';
import { problemFromInput } from '../../src/problem/problem-from.ts';
import { readWith } from '../../src/problem/read-with.ts';

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
    fc.property(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 2, max: 40 }), (more, scores) => {
      const length = 5 * (scores + 1) + more;
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

/** Every fault as path, message and remedy. */
function faults(schema: Parameters<typeof readWith>[0], input: unknown) {
  try {
    readWith(schema, input);
    return [];
  } catch (error) {
    return problemFromInput(error)?.errors.map(({ path, message, remedy }) => [path, message, remedy]);
  }
}

test('a strip of panels that are too narrow to measure is refused, with the length and the number that would do', () => {
  expect(faults(stripSpec, { length: '54.99 mm' })).toEqual([
    [
      '/length',
      '10 scores make 11 panels of 5 mm: narrower than 5 mm they cannot be measured',
      'make the strip at least 55 mm long, or ask for at most 9 scores',
    ],
  ]);
});

test('the least strip is 5 mm for each panel, and what the refusal advises is accepted', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 30_000 }),
      fc.integer({ min: 2, max: 40 }),
      (hundredths, scores) => {
        const length = hundredths / 100;
        const found = faults(stripSpec, { units: 'mm', length, scores }) ?? [];
        expect(found.length).toBe(length < 5 * (scores + 1) ? 1 : 0);
        const [, longer, fewer] =
          /at least ([\d.]+) mm(?:.* at most (\d+) scores)?/u.exec(found[0]?.[2] ?? '') ?? [];
        if (longer) expect(faults(stripSpec, { units: 'mm', length: Number(longer), scores })).toEqual([]);
        if (fewer) {
          expect(faults(stripSpec, { units: 'mm', length, scores: Number(fewer) })).toEqual([]);
          expect(faults(stripSpec, { units: 'mm', length, scores: Number(fewer) + 1 })).toHaveLength(1);
        }
      },
    ),
  );
});

test('a strip in inches is told in inches', () => {
  expect(faults(stripSpec, { length: '1/2 in', scores: 2 })?.[0]).toEqual([
    '/length',
    expect.stringMatching(/^2 scores make 3 panels of ≈ 11\/64 in \(4.23 mm\)/u),
    'make the strip at least ≈ 19/32 in (15 mm) long',
  ]);
});

test.each([
  ['0.03 mm', true],
  ['2 mm', true],
  ['0.029 mm', false],
  ['2.01 mm', false],
  ['3 in', false],
])('a sheet of %s may have been measured: %s', (caliper, may) => {
  const found = faults(stripMeasurement, { length: '220 mm', measured: '217 mm', scores: 10, caliper });
  if (may) expect(found).toEqual([]);
  else
    expect(found).toEqual([
      ['/caliper', expect.stringMatching(/^the length is .* mm$/u), 'give a length from 0.03 mm to 2 mm'],
    ]);
});

test('a length of another kind is one fault, not two', () => {
  expect(faults(stripSpec, { length: '5 ft' })).toHaveLength(1);
  expect(faults(stripSpec, { length: '0 mm' })).toHaveLength(1);
  expect(faults(stripSpec, { length: 50 })).toHaveLength(1);
});
