import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ellipse } from '../../../shared/geometry/arcs.ts';
import { areaOf } from '../../../shared/geometry/area.ts';
import { boundsOf } from '../../../shared/geometry/bounds.ts';
import type { Shape } from '../../../shared/geometry/contour.ts';
import { move } from '../../../shared/geometry/plane.ts';
import {
  placesOf,
  type RepeatSpec,
  repeated,
  repeatFaults,
  repeatSpec,
} from '../../../shared/knockouts/motifs/registry.ts';
import { withUnits } from '../../../shared/lengths/length-schema.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';

const reader = withUnits({ border: repeatSpec });

function readRepeat(written: object): RepeatSpec {
  const { success, data, error } = reader.safeParse({ units: 'mm', border: written });
  if (!success) throw new Error(JSON.stringify(error.issues));
  return data.border;
}

/** Where the middle of each motif comes to lie, in mm, and which way its top points. */
const middles = (written: object): number[][] =>
  placesOf(readRepeat(written)).map((place) => {
    const { x, y } = move(place, { x: 0, y: 0 });
    return [x, y].map((value) => Math.round(value / 10) / 1e5 + 0);
  });
const tops = (written: object): number[][] =>
  placesOf(readRepeat(written)).map((place) => {
    const [from, to] = [move(place, { x: 0, y: 0 }), move(place, { x: 0, y: -1 })];
    return [to.x - from.x, to.y - from.y].map((value) => Math.round(value * 1000) / 1000 + 0);
  });
const messages = (written: object): string[] =>
  repeatFaults(readRepeat(written)).map(({ message }) => message);

describe('along an edge', () => {
  const line = { repeat: 'edge', length: 100, margin: 10 };

  test('a count is spread from margin to margin, and one motif lies in the middle', () => {
    expect(middles({ ...line, count: 5 })).toEqual([
      [-40, 0],
      [-20, 0],
      [0, 0],
      [20, 0],
      [40, 0],
    ]);
    expect(middles({ ...line, count: 1 })).toEqual([[0, 0]]);
    expect(middles({ repeat: 'edge', length: 100, count: 2 })).toEqual([
      [-50, 0],
      [50, 0],
    ]);
  });

  test('a pitch is kept, with as many as fit in the middle: 80 mm hold 3 steps of 25 mm', () => {
    expect(middles({ ...line, pitch: 25 })).toEqual([
      [-37.5, 0],
      [-12.5, 0],
      [12.5, 0],
      [37.5, 0],
    ]);
    expect(middles({ ...line, pitch: 40 })).toHaveLength(3);
    expect(middles({ ...line, pitch: 90 })).toEqual([[0, 0]]);
  });

  test('the places are centred, a step apart, and within the margins', () => {
    const steps = fc.oneof(
      fc.record({ count: fc.integer({ min: 1, max: 400 }) }),
      fc.record({ pitch: fc.integer({ min: 2, max: 100 }) }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 600 }),
        fc.integer({ min: 0, max: 50 }),
        steps,
        (length, margin, step) => {
          const written = { repeat: 'edge', length, margin, ...step };
          expect(messages(written)).toEqual([]);
          const across = middles(written).map(([x = Number.NaN]) => x);
          expect(Math.abs((across[0] ?? 0) + (across.at(-1) ?? 0))).toBeLessThan(1e-4);
          expect(across.at(-1)).toBeLessThanOrEqual(length / 2 - margin + 1e-4);
          const gaps = across.slice(1).map((x, index) => x - (across[index] ?? 0));
          if (gaps.length > 0) expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-4);
          if ('pitch' in step && gaps.length > 0) expect(gaps[0]).toBeCloseTo(step.pitch, 4);
        },
      ),
    );
  });

  test('takes one of count and pitch, margins that leave something, and not too many motifs', () => {
    expect(messages(line)).toEqual(['how often the motif is repeated takes one of count and pitch']);
    expect(messages({ ...line, count: 3, pitch: 20 })).toHaveLength(1);
    expect(messages({ ...line, margin: 51, count: 3 })).toEqual(['the margins leave nothing of the length']);
    expect(messages({ ...line, length: 600, pitch: 1 })).toEqual([
      'at this pitch the motif is repeated 581 times',
    ]);
    expect(() => readRepeat({ ...line, count: 401 })).toThrow();
  });
});

describe('in a grid', () => {
  const grid = { repeat: 'grid', columns: 3, rows: 2, across: 10, down: 8 };

  test('rows and columns are centred', () => {
    expect(middles(grid)).toEqual([
      [-10, -4],
      [0, -4],
      [10, -4],
      [-10, 4],
      [0, 4],
      [10, 4],
    ]);
  });

  test('staggered, the second row lies between the columns of the first', () => {
    expect(middles({ ...grid, staggered: true })).toEqual([
      [-10, -4],
      [0, -4],
      [10, -4],
      [-5, 4],
      [5, 4],
    ]);
  });

  test('has no empty rows and not too many motifs', () => {
    expect(messages({ ...grid, columns: 1, staggered: true })).toHaveLength(1);
    expect(messages({ ...grid, columns: 1, rows: 1, staggered: true })).toEqual([]);
    expect(messages({ ...grid, columns: 21, rows: 20 })).toEqual(['the grid has 420 motifs']);
  });
});

describe('in a ring', () => {
  const ring = { repeat: 'ring', count: 4, radius: 20 };

  test('the first is at the top and the others follow clockwise, tops outward', () => {
    expect(middles(ring)).toEqual([
      [0, -20],
      [20, 0],
      [0, 20],
      [-20, 0],
    ]);
    expect(tops(ring)).toEqual([
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0],
    ]);
  });

  test('upright ones stay so', () => {
    expect(tops({ ...ring, facing: 'upright' })).toEqual([
      [0, -1],
      [0, -1],
      [0, -1],
      [0, -1],
    ]);
    expect(middles({ ...ring, facing: 'upright' })).toEqual(middles(ring));
  });
});

describe('a repeated motif', () => {
  const dot: Shape = [ellipse({ x: 0, y: 0 }, mm(3), mm(3))];

  test('is as many figures as there are places where they are apart', () => {
    const border = repeated(dot, readRepeat({ repeat: 'ring', count: 12, radius: 20 }));
    expect(border).toHaveLength(12);
    expect(areaOf(border) / areaOf(dot)).toBeCloseTo(12, 6);
    expect(boundsOf(border).right).toBeCloseTo(mm(23), 0);
  });

  test('is united where neighbours overlap', () => {
    expect(repeated(dot, readRepeat({ repeat: 'edge', length: 50, pitch: 5 }))).toHaveLength(1);
  });
});

test('a spec names no repeat that is not there', () => {
  expect(() => placesOf({ repeat: 'spiral' } as unknown as RepeatSpec)).toThrow('no repeat is called spiral');
});
