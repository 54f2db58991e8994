import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arcCurves, arcPoint, ellipse, QUARTER_ARC_ERROR } from '../../shared/geometry/arcs.ts';
import type { Point } from '../../shared/geometry/plane.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { sampled } from '../support/contours.ts';

const radius = mm(20);
const offCircle = (points: readonly Point[]) => points.map(({ x, y }) => Math.hypot(x, y) / radius - 1);

describe('a circle of four cubics', () => {
  const errors = offCircle(sampled(ellipse({ x: 0, y: 0 }, radius, radius), 1000));

  test('errs outward only, by as much as is stated and no more', () => {
    expect(Math.min(...errors)).toBeGreaterThan(-1e-12);
    expect(Math.max(...errors)).toBeLessThanOrEqual(QUARTER_ARC_ERROR);
    expect(Math.max(...errors)).toBeGreaterThan(QUARTER_ARC_ERROR * 0.99);
  });

  test('is 5.5 µm off at a radius of 20 mm', () => {
    expect(QUARTER_ARC_ERROR * 20_000).toBeCloseTo(5.5, 1);
  });

  test('the check fails on handles of 0.55 instead of 4/3 · tan 22.5° = 0.5523', () => {
    const reach = 0.55 * radius;
    const rough = sampled({
      start: { x: radius, y: 0 },
      stretches: [
        {
          control: [
            { x: radius, y: reach },
            { x: reach, y: radius },
          ],
          to: { x: 0, y: radius },
        },
      ],
    });
    expect(Math.min(...offCircle(rough))).toBeLessThan(-1e-12);
  });
});

describe('arcs', () => {
  test('start and end on the ellipse, span at most a quarter a curve, and stay near it', () => {
    const degrees = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(degrees, degrees, (from, to) => {
        fc.pre(from !== to);
        const arc = { centre: { x: mm(3), y: mm(-2) }, radiusX: mm(20), radiusY: mm(10), from, to };
        const stretches = arcCurves(arc);
        expect(stretches).toHaveLength(Math.ceil(Math.abs(to - from) / 90));
        expect(stretches.at(-1)?.to).toEqual(arcPoint(arc, to));
        const points = sampled({ start: arcPoint(arc, from), stretches }, 50);
        for (const { x, y } of points) {
          const off = Math.hypot((x - mm(3)) / mm(20), (y + mm(2)) / mm(10)) - 1;
          expect(off).toBeGreaterThan(-1e-9);
          expect(off).toBeLessThan(QUARTER_ARC_ERROR * 1.001);
        }
      }),
    );
  });

  test('run clockwise as seen where the angle grows: from the right to the bottom', () => {
    const arc = { centre: { x: 0, y: 0 }, radiusX: 10, radiusY: 10, from: 0, to: 90 };
    expect(arcPoint(arc, 0)).toEqual({ x: 10, y: 0 });
    expect(arcCurves(arc).at(-1)?.to).toEqual({ x: 0, y: 10 });
  });
});
