import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../shared/lengths/nanometres.ts';
import { apartBound } from '../../shared/nesting/apart-bound.ts';
import { jobsOf } from '../../shared/nesting/job.ts';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { type NestInput, nestSpec } from '../../shared/nesting/nest-spec.ts';
import { outlineArea, turnedOutline } from '../../shared/nesting/outline.ts';
import { distanceApart } from '../support/distance-apart.ts';
import { nestingFaults } from '../support/nesting-faults.ts';

type Piece = NestInput['pieces'][number];

const corners = (...points: readonly (readonly [number, number])[]) =>
  points.map(([x, y]) => ({ x: mm(x), y: mm(y) }));
const triangle: Piece = {
  name: 'pennant',
  width: mm(100),
  height: mm(80),
  count: 4,
  paper: 'card',
  outline: corners([0, 80], [50, 0], [100, 80]),
};
const angle: Piece = {
  name: 'corner',
  width: mm(60),
  height: mm(60),
  count: 2,
  paper: 'card',
  outline: corners([0, 0], [20, 0], [20, 40], [60, 40], [60, 60], [0, 60]),
};
const square = (side: number) => corners([0, 0], [side, 0], [side, side], [0, side]);

/** A star-shaped outline with as many corners as radii, in its own box. */
const star = (radii: readonly number[]): Pick<Piece, 'width' | 'height' | 'outline'> => {
  const points = radii.map((radius, index) => {
    const at = (2 * Math.PI * index) / radii.length;
    return { x: Math.round(radius * Math.cos(at)), y: Math.round(radius * Math.sin(at)) };
  });
  const [left, top] = [Math.min(...points.map(({ x }) => x)), Math.min(...points.map(({ y }) => y))];
  const outline = points.map(({ x, y }) => ({ x: x - left, y: y - top }));
  return {
    outline,
    width: Math.max(...outline.map(({ x }) => x)),
    height: Math.max(...outline.map(({ y }) => y)),
  };
};

describe('pieces with outlines', () => {
  test('never come nearer than the gap, whatever their shape', () => {
    const piece = fc
      .record({
        shape: fc.array(fc.integer({ min: mm(8), max: mm(40) }), { minLength: 5, maxLength: 12 }).map(star),
        count: fc.integer({ min: 1, max: 4 }),
        turns: fc.constantFrom('none' as const, 'half' as const, 'quarter' as const),
      })
      .map(({ shape, count, turns }): Piece => ({ name: 'star', ...shape, count, turns, paper: 'card' }));
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(0, mm(1), mm(3)),
        (pieces, gap) => {
          const rectangle: Piece = { name: 'tag', width: mm(30), height: mm(18), count: 2, paper: 'card' };
          const sheet = { paper: 'card', width: mm(150), height: mm(110), margin: mm(4) };
          const spec: NestInput = { pieces: [...pieces, rectangle], sheets: [sheet], gap, evaluations: 120 };
          expect(nestingFaults(spec, runToEnd(nest(spec)))).toEqual([]);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('lie head to foot where that saves a sheet', () => {
    // three pennants in a row, the middle one on its head, take 200 mm; four boxes of 100 × 80 do not fit
    const spec: NestInput = {
      pieces: [{ ...triangle, count: 3 }],
      sheets: [{ paper: 'card', width: mm(205), height: mm(82) }],
    };
    const nesting = runToEnd(nest(spec));
    expect(nestingFaults(spec, nesting)).toEqual([]);
    expect(nesting).toMatchObject({ sheets: 1, bound: 1, proved: true });
    const upright = runToEnd(nest({ ...spec, pieces: [{ ...triangle, count: 3, turns: 'none' }] }));
    expect(upright.sheets).toBe(2);
  });

  test('hook into each other, and a rectangle goes into the angle of another piece', () => {
    const tag: Piece = { name: 'tag', width: mm(38), height: mm(38), count: 1, paper: 'card' };
    const spec: NestInput = {
      pieces: [{ ...angle, count: 1 }, tag],
      sheets: [{ paper: 'card', width: mm(61), height: mm(61) }],
    };
    const nesting = runToEnd(nest(spec));
    expect(nestingFaults(spec, nesting)).toEqual([]);
    expect(nesting.sheets).toBe(1);
    expect(runToEnd(nest({ ...spec, gap: mm(3) })).sheets).toBe(2);
  });

  test('are the same for the same seed, and never take more sheets than their boxes', () => {
    const spec: NestInput = {
      pieces: [
        triangle,
        angle,
        { ...triangle, width: mm(50), height: mm(50), outline: square(50), count: 5 },
      ],
      sheets: [{ paper: 'card', width: mm(210), height: mm(148) }],
      gap: mm(1),
      evaluations: 300,
    };
    const nesting = runToEnd(nest(spec));
    expect(runToEnd(nest(spec))).toEqual(nesting);
    const boxes = { ...spec, pieces: spec.pieces.map(({ outline: _, ...box }) => box) };
    expect(nesting.sheets).toBeLessThanOrEqual(runToEnd(nest(boxes)).sheets);
  });

  test('of which no two share a sheet are proved to take one each', () => {
    const rhombus = {
      width: mm(100),
      height: mm(100),
      outline: corners([50, 0], [100, 50], [50, 100], [0, 50]),
    };
    const pieces = [{ name: 'rhombus', ...rhombus, count: 3, paper: 'card' }];
    const on = (side: number) =>
      runToEnd(nest({ pieces, sheets: [{ paper: 'card', width: mm(side), height: mm(side) }] }));
    // beside one another they reach 100 mm plus half of that in either direction
    expect(on(149)).toMatchObject({ sheets: 3, bound: 3, proved: true });
    expect(on(151).sheets).toBe(2);
  });

  test('are not proved to lie apart where one fits into a closed hollow of the other', () => {
    // the mouth of 10 mm lets no pennant in, yet the hollow of 60 × 60 mm holds one
    const outline = corners(
      ...([
        [0, 0],
        [100, 0],
        [100, 45],
        [80, 45],
        [80, 20],
        [20, 20],
        [20, 80],
      ] as const),
      ...([
        [80, 80],
        [80, 55],
        [100, 55],
        [100, 100],
        [0, 100],
      ] as const),
    );
    const clasp: Piece = { name: 'clasp', width: mm(100), height: mm(100), count: 1, paper: 'card', outline };
    const pennant = {
      ...triangle,
      width: mm(40),
      height: mm(40),
      outline: corners([0, 40], [20, 0], [40, 40]),
    };
    const on = (piece: Piece) =>
      runToEnd(
        nest({
          pieces: [clasp, { ...piece, count: 1 }],
          sheets: [{ paper: 'card', width: mm(100), height: mm(100) }],
        }),
      );
    expect(on(pennant)).toMatchObject({ bound: 1, proved: false });
    // a pennant that only fits where the clasp's own paper is
    const large = { ...pennant, width: mm(75), height: mm(75), outline: corners([0, 75], [37, 0], [75, 75]) };
    expect(on(large)).toMatchObject({ sheets: 2, bound: 2, proved: true });
    // nor in the middle of a tray of 9200 mm², whose corners leave triangles of 20 mm free
    const whole = {
      ...clasp,
      outline: corners([20, 0], [80, 0], [100, 20], [100, 80], [80, 100], [20, 100], [0, 80], [0, 20]),
    };
    const small = { ...pennant, width: mm(30), height: mm(30), outline: corners([0, 30], [15, 0], [30, 30]) };
    const within = runToEnd(
      nest({
        pieces: [whole, { ...small, count: 1 }],
        sheets: [{ paper: 'card', width: mm(100), height: mm(100) }],
      }),
    );
    expect(within).toMatchObject({ sheets: 2, bound: 2, proved: true });
  });

  test('take no fewer sheets than by the bound of those that do not go together', () => {
    const piece = fc
      .record({
        shape: fc.array(fc.integer({ min: mm(15), max: mm(60) }), { minLength: 4, maxLength: 9 }).map(star),
        count: fc.integer({ min: 1, max: 3 }),
        turns: fc.constantFrom('none' as const, 'quarter' as const),
      })
      .map(({ shape, count, turns }): Piece => ({ name: 'star', ...shape, count, turns, paper: 'card' }));
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 3 }), (pieces) => {
        const spec = nestSpec.parse({
          pieces,
          sheets: [{ paper: 'card', width: mm(130), height: mm(130) }],
          evaluations: 300,
        });
        const [job] = jobsOf(spec);
        if (job) {
          const control = { paper: 'card', limit: 1, evaluations: 0, sheets: 0, bound: 0 };
          const bound = runToEnd(apartBound(spec, job, control));
          expect(runToEnd(nest(spec)).sheets).toBeGreaterThanOrEqual(bound);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('must fill their box', () => {
    const loose = { ...triangle, outline: corners([0, 70], [50, 0], [100, 70]) };
    const spec = { pieces: [loose], sheets: [{ paper: 'card', width: mm(300), height: mm(300) }] };
    expect(() => nest(spec).next()).toThrow(/touch all four sides/u);
  });
});

describe('outlines', () => {
  test('turned four times are as they were, and keep their area', () => {
    const turns = [0, 90, 180, 270] as const;
    const outline = triangle.outline ?? [];
    expect(turnedOutline(outline, mm(100), mm(80), 90)).toEqual(corners([0, 0], [80, 50], [0, 100]));
    const twice = turnedOutline(turnedOutline(outline, mm(100), mm(80), 90), mm(80), mm(100), 270);
    expect(twice).toEqual(outline);
    for (const turn of turns)
      expect(outlineArea(turnedOutline(outline, mm(100), mm(80), turn))).toBe((mm(100) * mm(80)) / 2);
  });

  test('the distance of two is what a ruler says, and less than 0 where they overlap', () => {
    const moved = (points: readonly { x: number; y: number }[], x: number, y: number) =>
      points.map((point) => ({ x: point.x + mm(x), y: point.y + mm(y) }));
    expect(distanceApart(square(10), moved(square(10), 13, 0))).toBe(mm(3));
    expect(distanceApart(square(10), moved(square(10), 13, 14))).toBe(mm(5));
    expect(distanceApart(square(10), moved(square(10), 5, 5))).toBe(-1);
    expect(distanceApart(square(10), moved(square(2), 4, 4))).toBe(-1);
    expect(distanceApart(square(10), moved(square(10), 10, 0))).toBe(0);
    expect(distanceApart(square(10), square(10))).toBe(-1);
    expect(distanceApart(angle.outline as [], moved(square(30), 25, 5))).toBe(mm(5));
  });
});
