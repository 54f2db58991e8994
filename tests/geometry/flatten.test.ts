import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ellipse } from '../../shared/geometry/arcs.ts';
import type { Contour } from '../../shared/geometry/contour.ts';
import { pointAt } from '../../shared/geometry/cubic.ts';
import { CHORD_ERROR, chordsFor, flatten, flattenShape } from '../../shared/geometry/flatten.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { blobs, distanceTo, sampled } from '../support/contours.ts';

const errors = fc.constantFrom(mm(0.001), mm(0.01), mm(0.1));

const farthest = (contour: Contour, polygon: readonly { x: number; y: number }[]): number =>
  Math.max(...sampled(contour, 50).map((p) => distanceTo([polygon], p)));

describe('a flattened contour', () => {
  test('has all of the contour within the chord error', () => {
    fc.assert(
      fc.property(blobs, errors, (blob, error) => {
        expect(farthest(blob, flatten(blob, error))).toBeLessThanOrEqual(error * 1.001);
      }),
      { numRuns: 40 },
    );
  });

  test('has its corners on the contour', () => {
    fc.assert(
      fc.property(blobs, (blob) => {
        const line = [sampled(blob, 400)];
        for (const p of flatten(blob, mm(0.1))) expect(distanceTo(line, p)).toBeLessThan(mm(0.001));
      }),
      { numRuns: 30 },
    );
  });

  test('the check fails on a polygon of the ends alone', () => {
    const circle = ellipse({ x: 0, y: 0 }, mm(10), mm(10));
    const corners = [circle.start, ...circle.stretches.map(({ to }) => to)];
    expect(farthest(circle, corners)).toBeGreaterThan(mm(1));
    expect(farthest(circle, flatten(circle))).toBeLessThanOrEqual(CHORD_ERROR);
  });

  test('of a circle has about as many corners as it takes: a sagitta s takes a turn of 2·acos(1 − s/r)', () => {
    const radius = mm(20);
    const least = (2 * Math.PI) / (2 * Math.acos(1 - CHORD_ERROR / radius));
    const { length } = flatten(ellipse({ x: 0, y: 0 }, radius, radius));
    expect(length).toBeGreaterThanOrEqual(least);
    expect(length).toBeLessThan(least * 1.2);
  });

  test('turns no more at each corner than is asked for', () => {
    const { stretches, start } = ellipse({ x: 0, y: 0 }, mm(1), mm(1));
    const [quarter] = stretches;
    expect(quarter && chordsFor(start, quarter, mm(1), Math.PI / 20)).toBe(10);
    expect(chordsFor(start, { to: { x: 0, y: 0 } }, 1, 0.001)).toBe(1);
  });

  test('is one polygon a contour', () => {
    const circle = ellipse({ x: 0, y: 0 }, mm(1), mm(1));
    expect(flattenShape([circle, circle], mm(0.1))).toEqual([
      flatten(circle, mm(0.1)),
      flatten(circle, mm(0.1)),
    ]);
  });
});

test('a point of a cubic by hand: (P0 + 3·P1 + 3·P2 + P3) / 8 in the middle', () => {
  const middle = pointAt(
    [
      { x: 0, y: 0 },
      { x: 0, y: 8 },
      { x: 8, y: 8 },
      { x: 16, y: 0 },
    ],
    0.5,
  );
  expect(middle).toEqual({ x: 5, y: 6 });
});
