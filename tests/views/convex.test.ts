import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Convex, centreOf, depthIn, reachIn, signedArea, without } from '../../shared/views/convex.ts';
import { roomiest } from '../../shared/views/roomiest.ts';

const box = (left: number, top: number, right: number, bottom: number): Convex => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

const area = (pieces: readonly Convex[]) =>
  pieces.reduce((sum, piece) => sum + Math.abs(signedArea(piece)), 0);

/** Whole numbers, so that polygons often share edges and corners. */
const boxes = fc
  .tuple(fc.nat(8), fc.nat(8), fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
  .map(([x, y, width, height]) => ({ left: x, top: y, right: x + width, bottom: y + height }));

describe('without', () => {
  test('leaves the area that the other does not share', () => {
    fc.assert(
      fc.property(boxes, boxes, fc.boolean(), (one, other, reversed) => {
        const over = box(other.left, other.top, other.right, other.bottom);
        const rest = without(
          box(one.left, one.top, one.right, one.bottom),
          reversed ? over.toReversed() : over,
        );
        const width = Math.max(0, Math.min(one.right, other.right) - Math.max(one.left, other.left));
        const height = Math.max(0, Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top));
        const whole = (one.right - one.left) * (one.bottom - one.top);
        expect(area(rest)).toBeCloseTo(whole - width * height, 9);
      }),
    );
  });

  test('a triangle takes half of the square that it halves', () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 0, y: 4 },
    ];
    const rest = without(box(0, 0, 4, 4), triangle);
    expect(area(rest)).toBeCloseTo(8, 9);
    expect(rest).toHaveLength(1);
  });

  test('what only touches stays whole', () => {
    const square = box(0, 0, 4, 4);
    expect(without(square, box(4, 0, 8, 4))).toEqual([square]);
  });
});

test('the centre, the depth and the reach of a rectangle', () => {
  const rectangle = box(0, 0, 10, 4);
  const centre = centreOf(rectangle);
  expect(centre.x).toBeCloseTo(5, 9);
  expect(centre.y).toBeCloseTo(2, 9);
  expect(depthIn(rectangle, centre)).toBeCloseTo(2, 9);
  expect(depthIn(rectangle, { x: 11, y: 2 })).toBeCloseTo(-1, 9);
  expect(reachIn(rectangle, { x: 3, y: 2 }, { x: 1, y: 0 })).toBeCloseTo(3, 9);
});

test('the roomiest place of an L is the middle of its thickest rectangle', () => {
  // columns 0 to 6 from row 0 to 20, and on to column 10 in the last 4 rows
  const space = roomiest([box(0, 0, 6, 16), box(0, 16, 10, 20)]);
  expect(space?.centre).toEqual({ x: 3, y: 10 });
  expect(space?.depth).toBeCloseTo(3, 9);
});
