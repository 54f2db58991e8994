import { expect, test } from 'vitest';
import { labelSpot } from '../../shared/sets/label-spot.ts';

const corners = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }));
const square = corners([0, 0], [100, 0], [100, 100], [0, 100]);

test('a label stands in the middle of a rectangle', () => {
  expect(labelSpot([square])).toEqual({ x: 50, y: 50, room: 50 });
});

test('a label keeps off a window in the middle', () => {
  const { x, y, room } = labelSpot([square, corners([30, 30], [30, 70], [70, 70], [70, 30])]);
  expect(room).toBeGreaterThan(9);
  expect(Math.max(Math.abs(x - 50), Math.abs(y - 50))).toBeGreaterThan(20 + 9);
});

test('a label stands within an angle, whose middle is not its own', () => {
  const { x, y, room } = labelSpot([corners([0, 0], [20, 0], [20, 80], [100, 80], [100, 100], [0, 100])]);
  expect(room).toBeGreaterThan(7);
  expect(x < 20 || y > 80).toBe(true);
});
