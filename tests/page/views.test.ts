import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { after, type Matrix, photoOnSheet } from '../../src/page/views/photo-matrix.ts';
import { placeBadges } from '../../src/page/views/place-badges.ts';
import { sideRooms, tickReach, tickRows, unitEnd } from '../../src/page/views/tick-rows.ts';

const sent = ({ a, b, c, d, e, f }: Matrix, x: number, y: number) => [a * x + c * y + e, b * x + d * y + f];
const ups = [
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 1, y: 0 },
];

describe('a photo on the sheet', () => {
  const sheet = { width: 300, height: 200 };

  test.each(ups)('covers it, with its top where the print’s up ($x, $y) points', (up) => {
    for (const face of ['inside', 'outside'] as const) {
      const matrix = photoOnSheet(face, sheet, up);
      const corners = [sent(matrix, 0, 0), sent(matrix, 1, 0), sent(matrix, 0, 1), sent(matrix, 1, 1)];
      expect(Math.min(...corners.map(([x = 0]) => x))).toBe(0);
      expect(Math.max(...corners.map(([x = 0]) => x))).toBe(300);
      expect(Math.min(...corners.map(([, y = 0]) => y))).toBe(0);
      expect(Math.max(...corners.map(([, y = 0]) => y))).toBe(200);
      const [top, bottom] = [sent(matrix, 0.5, 0), sent(matrix, 0.5, 1)];
      expect(Math.sign((top[0] ?? 0) - (bottom[0] ?? 0))).toBe(up.x);
      expect(Math.sign((top[1] ?? 0) - (bottom[1] ?? 0))).toBe(up.y);
    }
  });

  test.each(ups)('reads right on the inside, and mirrored through the paper (%o)', (up) => {
    const turn = ({ a, b, c, d }: Matrix) => Math.sign(a * d - b * c);
    expect(turn(photoOnSheet('inside', sheet, up))).toBe(1);
    expect(turn(photoOnSheet('outside', sheet, up))).toBe(-1);
  });

  test('goes through one map after the other', () => {
    const double = { a: 2, b: 0, c: 0, d: 2, e: 5, f: 7 };
    const moved = photoOnSheet('outside', sheet, { x: 1, y: 0 });
    const [x = 0, y = 0] = sent(moved, 0.3, 0.8);
    expect(sent(after(double, moved), 0.3, 0.8)).toEqual(sent(double, x, y));
  });
});

describe('numbers along a ruler', () => {
  const widthOf = (text: string) => text.length * 7;

  test('never run into each other in a row', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 400 }), { maxLength: 12 }), (places) => {
        const ticks = places.toSorted((p, q) => p - q).map((at) => ({ at, text: String(at) }));
        const placed = tickRows(ticks, widthOf, 3);
        for (const row of [0, 1, 2]) {
          const own = placed.filter((tick) => tick.row === row);
          for (const [index, tick] of own.entries()) {
            const next = own[index + 1];
            if (row === 0) expect(unitEnd(placed, widthOf)).toBeLessThan(tick.at - widthOf(tick.text) / 2);
            if (next)
              expect(next.at - tick.at).toBeGreaterThan((widthOf(tick.text) + widthOf(next.text)) / 2);
          }
        }
      }),
    );
  });

  test('have room at the sides of the picture, however long they are', () => {
    const texts = fc.array(fc.constantFrom('0', '132.5', '≈ 5 11/32', '≈ 10 31/32'), { minLength: 1 });
    fc.assert(
      fc.property(texts, texts, (across, down) => {
        const { left, right } = sideRooms({ across, down }, widthOf);
        for (const text of down) expect(left - tickReach).toBeGreaterThanOrEqual(widthOf(text));
        for (const text of across) expect(Math.min(left, right)).toBeGreaterThanOrEqual(widthOf(text) / 2);
      }),
    );
  });

  test('are left out where no row has room', () => {
    const crowd = Array.from({ length: 4 }, () => ({ at: 50, text: '50' }));
    expect(tickRows(crowd, widthOf, 3)).toHaveLength(3);
  });
});

describe('numbers of what the checks found', () => {
  test('never lie over each other, and each stands in the picture', () => {
    const place = fc.record({
      number: fc.integer({ min: 1, max: 12 }),
      refuses: fc.boolean(),
      x: fc.integer({ min: 0, max: 300 }),
      y: fc.integer({ min: 0, max: 300 }),
    });
    fc.assert(
      fc.property(fc.array(place, { maxLength: 30 }), (found) => {
        const badges = placeBadges(found, { x: 150, y: 150 });
        expect(badges.map(({ number }) => number)).toEqual(
          [...new Set(found.map(({ number }) => number))].toSorted((one, other) => one - other),
        );
        for (const [index, badge] of badges.entries())
          for (const other of badges.slice(index + 1))
            expect(Math.hypot(badge.x - other.x, badge.y - other.y)).toBeGreaterThanOrEqual(20);
        for (const { x, y } of badges) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
          expect(Math.max(x, y)).toBeLessThanOrEqual(300);
        }
      }),
    );
  });
});
