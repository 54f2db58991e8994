import fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlap } from '../../shared/fold-format/face-orders.ts';
import { boxOf, type FlatFace } from '../../shared/folding/flat-faces.ts';
import { identity } from '../../shared/geometry/plane.ts';

/** A face from corners that run clockwise as seen, y down; a turned one keeps their order in memory reversed. */
const face = (corners: readonly (readonly [number, number])[], turned = false): FlatFace => {
  const points = corners.map(([x, y]) => ({ x, y }));
  return {
    index: 0,
    panel: '',
    corners: turned ? points.toReversed() : points,
    lies: identity,
    turned,
    height: 0,
    ...boxOf(points),
  };
};

const box = (left: number, top: number, size = 100, turned = false) =>
  face(
    [
      [left, top],
      [left + size, top],
      [left + size, top + size],
      [left, top + size],
    ],
    turned,
  );

test.each([
  [0, 0, true],
  [99, 0, false], // by 1 nm: touching
  [98, 98, false],
  [97, 97, true],
  [50, 50, true],
  [100, 0, false],
  [0, -100, false],
  [300, 0, false],
  [20, 20, true],
])('a square moved by %d, %d: %s', (x, y, expected) => {
  for (const turned of [false, true]) {
    expect(overlap(box(0, 0), box(x, y, 100, turned))).toBe(expected);
    expect(overlap(box(x, y, 100, turned), box(0, 0))).toBe(expected);
  }
});

test('boxes that overlap while the faces do not: two triangles across a diagonal', () => {
  const lower = face([
    [0, 0],
    [100, 100],
    [0, 100],
  ]);
  const upper = (off: number, turned = false) =>
    face(
      [
        [off, -off],
        [100 + off, -off],
        [100 + off, 100 - off],
      ],
      turned,
    );
  expect(overlap(lower, upper(0))).toBe(false);
  expect(overlap(lower, upper(10))).toBe(false);
  expect(overlap(lower, upper(-10))).toBe(true);
  expect(overlap(lower, upper(-10, true))).toBe(true);
  expect(overlap(lower, upper(10, true))).toBe(false);
});

test('one face inside another overlaps it', () => {
  expect(overlap(box(0, 0), box(40, 40, 20))).toBe(true);
});

test('squares overlap exactly when their shadows on both axes do, by more than they may touch', () => {
  const place = fc.integer({ min: -150, max: 150 });
  fc.assert(
    fc.property(place, place, (x, y) => {
      const shared = Math.min(100 - Math.abs(x), 100 - Math.abs(y));
      expect(overlap(box(0, 0), box(x, y))).toBe(shared > 2);
    }),
    { numRuns: 300, seed: 62 },
  );
});
