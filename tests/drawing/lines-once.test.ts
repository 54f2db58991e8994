import { expect, test } from 'vitest';
import { LinesOnce } from '../../shared/drawing/lines-once.ts';
import { polygon } from '../../shared/geometry/walk.ts';

const box = (left: number, right: number) =>
  polygon([
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: 10e6 },
    { x: left, y: 10e6 },
  ]);

/** How many lines the second of two boxes side by side still has, where so many nanometres lie between them. */
function linesLeft(between: number): number | 'all' {
  const once = new LinesOnce();
  once.leftOf(box(0, 16_360_000));
  const left = once.leftOf(box(16_360_000 + between, 30e6));
  return 'whole' in left ? 'all' : left.lines.reduce((sum, { stretches }) => sum + stretches.length, 0);
}

test.each([0, 1, 1432, -1432, 2000])('sides %d nm apart are one line, which is drawn once', (between) => {
  expect(linesLeft(between)).toBe(3);
});

test.each([2001, 5000])('sides %d nm apart are two', (between) => {
  expect(linesLeft(between)).toBe('all');
});
