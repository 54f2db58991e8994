import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { areaOf, isOuter } from '../../../shared/geometry/area.ts';
import { boundsOf } from '../../../shared/geometry/bounds.ts';
import { resolve } from '../../../shared/geometry/clip/combine.ts';
import { isInside } from '../../../shared/geometry/inside.ts';
import { polygon } from '../../../shared/geometry/walk.ts';
import {
  naturalSize,
  outlineOf,
  shapeFaults,
  shapeSpec,
  shapes,
} from '../../../shared/knockouts/shapes/registry.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import { stretchCount } from '../../support/contours.ts';
import { jtsFigure, jtsIsValid } from '../../support/jts.ts';
import { readShape, shapeOf, writtenShapes } from '../../support/shape-specs.ts';

test('every kind of shape is tried here', () => {
  expect(Object.keys(writtenShapes)).toEqual(shapes.map(({ name }) => name));
});

describe.each(Object.entries(writtenShapes))('%s', (_name, written) => {
  const drawn = written
    .map((value) => readShape(value))
    .filter(({ spec, faults }) => spec !== undefined && faults.length === 0)
    .map(({ spec }) => spec ?? shapeOf({ shape: 'circle', diameter: 1 }));

  test('can be read with every member within its limits', () => {
    fc.assert(
      fc.property(written, (value) => {
        expect(readShape(value).issues).toEqual([]);
      }),
    );
  });

  test('is drawn clockwise, around (0, 0), and never crosses or touches itself', () => {
    fc.assert(
      fc.property(drawn, (spec) => {
        const outline = outlineOf(spec);
        expect(outline.map(isOuter)).toEqual([true, ...outline.slice(1).map(() => false)]);
        const { left, top, right, bottom } = boundsOf(outline);
        const size = naturalSize(spec);
        expect(Math.abs(left + right)).toBeLessThan(1 + size.width * 1e-9);
        expect(Math.abs(top + bottom)).toBeLessThan(1 + size.height * 1e-9);
        expect(size).toEqual({ width: right - left, height: bottom - top });
        const per = Math.max(6, Math.min(48, Math.round(2000 / stretchCount(outline))));
        expect(jtsIsValid(jtsFigure(outline, per))).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  test('is one figure that comes through clipping as it is', () => {
    fc.assert(
      fc.property(drawn, (spec) => {
        const outline = outlineOf(spec);
        const resolved = resolve(outline, 'nonzero');
        expect(resolved).toHaveLength(outline.length);
        expect(areaOf(resolved) / areaOf(outline)).toBeCloseTo(1, 4);
      }),
      { numRuns: 40 },
    );
  });

  test('refuses what it does not know, by name', () => {
    const [sample] = fc.sample(written, 1);
    const { issues } = readShape({ ...sample, colour: 'red' });
    expect(issues.map(({ code }) => code)).toContain('unrecognized_keys');
    expect(JSON.stringify(issues)).toContain('colour');
  });
});

test('the checks fail on a contour that crosses itself', () => {
  const bowTie = polygon([
    { x: 0, y: 0 },
    { x: mm(20), y: mm(10) },
    { x: mm(20), y: 0 },
    { x: 0, y: mm(10) },
  ]);
  expect(jtsIsValid(jtsFigure([bowTie]))).toBe(false);
  expect(resolve([bowTie], 'nonzero')).toHaveLength(2);
});

describe('what does not go together is refused with a remedy that holds', () => {
  test.each([
    [{ shape: 'rounded-rectangle', width: 40, height: 20, corner: 10.01 }, 'corner', { corner: 10 }],
    [{ shape: 'regular-polygon', sides: 3, diameter: 20, corner: 6 }, 'corner', { corner: 5 }],
    [{ shape: 'star', points: 5, diameter: 20, corner: 9 }, 'corner', { corner: 1 }],
    [{ shape: 'arch', width: 30, height: 15 }, 'height', { height: 15.1 }],
    [{ shape: 'tag', width: 20, height: 40, shoulder: 10 }, 'shoulder', { shoulder: 9.75 }],
    [
      { shape: 'tag', width: 20, height: 40, eyelet: { diameter: 25 } },
      'eyelet',
      { eyelet: { diameter: 5 } },
    ],
    [
      { shape: 'tag', width: 20, height: 40, eyelet: { diameter: 5, below: 2 } },
      'eyelet',
      { eyelet: { diameter: 5, below: 4 } },
    ],
  ])('%j', (written, member, remedied) => {
    const { faults } = readShape(written);
    expect(faults.map(({ path }) => path[0])).toEqual([member]);
    expect(faults[0]?.message).not.toBe('');
    expect(faults[0]?.remedy).toMatch(/^give /u);
    expect(readShape({ ...written, ...remedied }).faults).toEqual([]);
  });

  test.each([
    [{ shape: 'rounded-rectangle', width: 40, height: 20, corner: 12 }, 'corner'],
    [{ shape: 'regular-polygon', sides: 7, diameter: 20, corner: 30 }, 'corner'],
    [{ shape: 'star', points: 9, diameter: 33, corner: 30 }, 'corner'],
    [{ shape: 'arch', width: 33.333, height: 15 }, 'height'],
    [{ shape: 'tag', width: 20, height: 40, shoulder: 100 }, 'shoulder'],
  ])('the figure in the remedy of %j can be taken', (written, member) => {
    const remedy = readShape(written).faults[0]?.remedy ?? '';
    const figure = Number(/([\d.]+) mm/u.exec(remedy)?.[1]);
    expect(readShape({ ...written, [member]: figure }).faults).toEqual([]);
  });
});

describe('limits of single members', () => {
  test.each([
    [{ shape: 'circle', diameter: 0.9 }],
    [{ shape: 'circle', diameter: 601 }],
    [{ shape: 'regular-polygon', sides: 2, diameter: 20 }],
    [{ shape: 'regular-polygon', sides: 4.5, diameter: 20 }],
    [{ shape: 'star', points: 5, diameter: 20, inner: 0.95 }],
    [{ shape: 'heart' }],
    [{ shape: 'blob', diameter: 20 }],
    [{ diameter: 20 }],
  ])('%j is not read', (written) => {
    expect(readShape(written).issues).not.toEqual([]);
  });

  test('lengths are read with their units', () => {
    expect(shapeOf({ shape: 'circle', diameter: '1 1/2 in' })).toEqual({
      shape: 'circle',
      diameter: 38_100_000,
    });
  });

  test('the contract describes every member', () => {
    const { $defs } = z.toJSONSchema(z.object({ shapeSpec }), { io: 'input' });
    const options = ($defs?.ShapeSpec?.oneOf ?? []) as {
      properties: Record<string, { description?: string }>;
    }[];
    expect(options).toHaveLength(shapes.length);
    const silent = options.flatMap(({ properties }) =>
      Object.entries(properties).filter(([member, { description }]) => member !== 'shape' && !description),
    );
    expect(silent).toEqual([]);
  });
});

describe('shapes stand upright', () => {
  const has = (written: object, x: number, y: number): boolean =>
    isInside(outlineOf(shapeOf(written)), { x: mm(x), y: mm(y) });

  test('a heart has its point below and its cleft above', () => {
    const heart = { shape: 'heart', width: 40 };
    expect([has(heart, 0, 18), has(heart, 0, -17), has(heart, 10, -17), has(heart, -10, -17)]).toEqual([
      true,
      false,
      true,
      true,
    ]);
  });

  test('a star has a tip at the top, a polygon a side at the bottom, an arch is flat below', () => {
    expect(has({ shape: 'star', points: 5, diameter: 40 }, 0, -17.5)).toBe(true);
    expect(has({ shape: 'regular-polygon', sides: 3, diameter: 40 }, -15, 14.5)).toBe(true);
    expect(has({ shape: 'regular-polygon', sides: 4, diameter: 40 }, 14, 14)).toBe(true);
    expect(has({ shape: 'arch', width: 20, height: 30 }, 9.9, 14.9)).toBe(true);
    expect(has({ shape: 'arch', width: 20, height: 30 }, 9.9, -14.9)).toBe(false);
  });

  test('a tag has its cut corners and its eyelet above', () => {
    const tag = { shape: 'tag', width: 20, height: 40, eyelet: { diameter: 4 } };
    expect([has(tag, 9.5, -19.5), has(tag, 9.5, 19.5), has(tag, 0, -15), has(tag, 0, -12)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  test('a thumb notch is flat at the top, 24 mm × 12 mm unless told otherwise', () => {
    const notch = { shape: 'thumb-notch' };
    expect(naturalSize(shapeOf(notch))).toEqual({ width: mm(24), height: mm(12) });
    expect([has(notch, 11.5, -5.9), has(notch, 11.5, 5.9), has(notch, 0, 5.9)]).toEqual([true, false, true]);
  });

  test('a ribbon slot is 2 mm longer than the ribbon is wide and 1.5 mm wide, with round ends (common practice)', () => {
    const slot = { shape: 'ribbon-slot', ribbon: 10 };
    expect(naturalSize(shapeOf(slot))).toEqual({ width: mm(12), height: mm(1.5) });
    expect([has(slot, 5.9, 0), has(slot, 5.9, 0.7)]).toEqual([true, false]);
  });

  test('scallops lie at the top of a circle and on the corners of a rectangle', () => {
    const { width, height } = naturalSize(shapeOf({ shape: 'scalloped-rectangle', width: 44, height: 30 }));
    expect(Math.abs(width - mm(44))).toBeLessThan(mm(0.01));
    expect(Math.abs(height - mm(30))).toBeLessThan(mm(0.01));
    expect(has({ shape: 'scalloped-rectangle', width: 44, height: 30 }, 20.4, 13.6)).toBe(true);
    expect(has({ shape: 'scalloped-circle', diameter: 40 }, 0, -19.9)).toBe(true);
  });
});

test('a spec names no shape that is not there', () => {
  const other = { shape: 'spiral' } as unknown as Parameters<typeof outlineOf>[0];
  expect(() => outlineOf(other)).toThrow('no shape is called spiral');
  expect(() => shapeFaults(other)).toThrow('spiral');
});
