import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../shared/geometry/arc-length.ts';
import { QUARTER_ARC_ERROR } from '../../shared/geometry/arcs.ts';
import { areaOf } from '../../shared/geometry/area.ts';
import { offset } from '../../shared/geometry/clip/offset.ts';
import { naturalSize, outlineOf } from '../../shared/knockouts/shapes/registry.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { CIRCLE_AREA_EXCESS } from '../support/contours.ts';
import { shapeOf } from '../support/shape-specs.ts';

const { PI, SQRT2, cos, sin, sqrt, tan } = Math;

/*
 * Areas by elementary plane geometry, in mm². `round` is the part of it that arcs bound, taken as whole circles or
 * parts of them: there the cubics are larger by at most CIRCLE_AREA_EXCESS.
 */
const known: readonly [name: string, written: object, area: number, round: number, formula: string][] = [
  ['circle', { shape: 'circle', diameter: 20 }, PI * 100, PI * 100, 'π·r²'],
  ['oval', { shape: 'oval', width: 40, height: 10 }, PI * 20 * 5, PI * 100, 'π·a·b'],
  ['rectangle', { shape: 'rounded-rectangle', width: 40, height: 20, corner: 0 }, 800, 0, 'w·h'],
  [
    'rounded rectangle',
    { shape: 'rounded-rectangle', width: 40, height: 20, corner: 3 },
    800 - (4 - PI) * 9,
    PI * 9,
    'w·h − (4 − π)·r²',
  ],
  ['triangle', { shape: 'regular-polygon', sides: 3, diameter: 20 }, (3 * sqrt(3) * 100) / 4, 0, '3·√3/4·R²'],
  ['square', { shape: 'regular-polygon', sides: 4, diameter: 20 }, 200, 0, '2·R²'],
  ['hexagon', { shape: 'regular-polygon', sides: 6, diameter: 20 }, 150 * sqrt(3), 0, '3·√3/2·R²'],
  [
    '17 sides',
    { shape: 'regular-polygon', sides: 17, diameter: 20 },
    (17 / 2) * 100 * sin((2 * PI) / 17),
    0,
    'n/2·R²·sin(2π/n)',
  ],
  [
    'hexagon with round corners',
    { shape: 'regular-polygon', sides: 6, diameter: 20, corner: 2 },
    150 * sqrt(3) - 4 * (6 * tan(PI / 6) - PI),
    PI * 4,
    'A − r²·(n·tan(π/n) − π)',
  ],
  [
    'star of eight',
    { shape: 'star', points: 8, diameter: 40, inner: 0.6 },
    8 * 20 * 12 * sin(PI / 8),
    0,
    'n·R·r·sin(π/n)',
  ],
  // 1.122 569 94·R² (from memory, and by n·R·r·sin(π/n) with r/R = cos 72°/cos 36°)
  [
    'pentagram',
    { shape: 'star', points: 5, diameter: 20 },
    112.256994,
    0,
    '10·sin 36°·cos 72°/(2·cos 36°)·R²',
  ],
  [
    'heart',
    { shape: 'heart', width: 40 },
    (40 / (1 + 1 / SQRT2)) ** 2 * (1 + PI / 4),
    ((40 / (1 + 1 / SQRT2)) ** 2 * PI) / 4,
    'a square of side s and two half discs on it: s²·(1 + π/4), width s·(1 + 1/√2)',
  ],
  [
    'arch',
    { shape: 'arch', width: 20, height: 30 },
    20 * 20 + (PI * 100) / 2,
    (PI * 100) / 2,
    'w·(h − w/2) + π·w²/8',
  ],
  ['tag', { shape: 'tag', width: 20, height: 40, shoulder: 6 }, 800 - 36, 0, 'w·h − s²'],
  [
    'tag with an eyelet',
    { shape: 'tag', width: 20, height: 40, shoulder: 6, eyelet: { diameter: 5 } },
    800 - 36 - PI * 6.25,
    PI * 6.25,
    'w·h − s² − π·r²',
  ],
  [
    'ribbon slot',
    { shape: 'ribbon-slot', ribbon: 10 },
    10.5 * 1.5 + PI * 0.5625,
    PI * 0.5625,
    '(l − w)·w + π·w²/4',
  ],
  ['thumb notch', { shape: 'thumb-notch', radius: 10 }, 50 * PI, 50 * PI, 'π·r²/2'],
  (() => {
    // n discs of radius ρ, centres on a circle of radius q, chord c = 2·q·sin(π/n) and ρ = c/√3: the polygon of the
    // centres, a triangle of height ρ/2 on each side, and of each disc a sector of 120° + 360°/n
    const n = 12;
    const q = 20 / (1 + (2 * sin(PI / n)) / sqrt(3));
    const c = 2 * q * sin(PI / n);
    const sectors = (n * (c ** 2 / 3) * ((2 * PI) / 3 + (2 * PI) / n)) / 2;
    const area = (n / 2) * q ** 2 * sin((2 * PI) / n) + (n * c * (c / sqrt(3) / 2)) / 2 + sectors;
    return [
      'scalloped circle of 12',
      { shape: 'scalloped-circle', diameter: 40, scallop: 7.9 },
      area,
      sectors,
      'polygon + triangles + sectors',
    ] as const;
  })(),
  (() => {
    // 3 × 2 steps of size d × e between the middles of corner discs: w = (3 + 2/√3)·d, h = (2 + 2/√3)·e; for steps of
    // 1 the rectangle of the centres, 10 triangles of height 1/(2·√3), and sectors of 10 · 120° + 360° of radius 1/√3
    const [d, e] = [40 / (3 + 2 / sqrt(3)), 30 / (2 + 2 / sqrt(3))];
    const sectors = ((1 / 3) * (10 * ((2 * PI) / 3) + 2 * PI)) / 2;
    const area = 6 + (10 * (1 / (2 * sqrt(3)))) / 2 + sectors;
    return [
      'scalloped rectangle of 3 × 2',
      { shape: 'scalloped-rectangle', width: 40, height: 30, scallop: 9.6 },
      d * e * area,
      d * e * sectors,
      'rectangle + triangles + sectors',
    ] as const;
  })(),
];

const areaMm2 = (written: object): number => areaOf(outlineOf(shapeOf(written))) / mm(1) ** 2;

describe('areas of shapes', () => {
  test.each(known)('%s', (_name, written, area, round) => {
    expect(Math.abs(areaMm2(written) - area)).toBeLessThanOrEqual(round * CIRCLE_AREA_EXCESS + area * 1e-8);
  });

  test('the check fails on a circle of eight sides, and on 1 µm of radius', () => {
    expect(Math.abs(4 * 100 * SQRT2 * sin(PI / 4) - PI * 100)).toBeGreaterThan(PI * 100 * CIRCLE_AREA_EXCESS);
    expect(areaMm2({ shape: 'circle', diameter: 20.006 }) - PI * 100).toBeGreaterThan(
      PI * 100 * CIRCLE_AREA_EXCESS,
    );
  });

  test('every kind of shape is among them', () => {
    expect(new Set(known.map(([, written]) => ('shape' in written ? written.shape : ''))).size).toBe(12);
  });
});

describe('lengths of outlines, by the same geometry', () => {
  const around = (written: object): number =>
    outlineOf(shapeOf(written)).reduce((sum, contour) => sum + lengthOf(contour), 0) / mm(1);

  test.each([
    ['circle', { shape: 'circle', diameter: 20 }, 20 * PI],
    [
      'rounded rectangle',
      { shape: 'rounded-rectangle', width: 40, height: 20, corner: 3 },
      120 - 24 + 6 * PI,
    ],
    ['hexagon', { shape: 'regular-polygon', sides: 6, diameter: 20 }, 60],
    ['arch', { shape: 'arch', width: 20, height: 30 }, 20 + 40 + 10 * PI],
    ['heart of a square of 10 mm', { shape: 'heart', width: 10 * (1 + 1 / SQRT2) }, 20 + 10 * PI],
    // Ramanujan's second approximation (1914), good to 1e-7 here: π(a + b)(1 + 3h/(10 + √(4 − 3h))), h = ((a − b)/(a + b))²
    ['oval', { shape: 'oval', width: 40, height: 20 }, PI * 30 * (1 + 3 / 9 / (10 + sqrt(4 - 3 / 9)))],
  ])('%s', (_name, written, length) => {
    expect(Math.abs(around(written) / length - 1)).toBeLessThan(QUARTER_ARC_ERROR);
  });
});

describe('sizes of shapes', () => {
  test.each([
    [
      'pentagram: 2·R·sin 72° × R·(1 + cos 36°)',
      { shape: 'star', points: 5, diameter: 20 },
      20 * sin((72 * PI) / 180),
      10 * (1 + cos(PI / 5)),
    ],
    ['hexagon: 2·R × √3·R', { shape: 'regular-polygon', sides: 6, diameter: 20 }, 20, 10 * sqrt(3)],
    ['triangle: √3·R × 3/2·R', { shape: 'regular-polygon', sides: 3, diameter: 20 }, 10 * sqrt(3), 15],
    [
      'heart: width × (1/2 + 3/(2·√2))/(1 + 1/√2)',
      { shape: 'heart', width: 40 },
      40,
      (40 * (1 / 2 + 3 / (2 * SQRT2))) / (1 + 1 / SQRT2),
    ],
    ['heart of a given height', { shape: 'heart', width: 40, height: 50 }, 40, 50],
  ])('%s', (_name, written, width, height) => {
    const size = naturalSize(shapeOf(written));
    expect(size.width / mm(1)).toBeCloseTo(width, 6);
    expect(size.height / mm(1)).toBeCloseTo(height, 6);
  });
});

/*
 * J. Steiner, Über parallele Flächen, 1840: a convex figure grown by d has the area A + P·d + π·d², where round
 * joins are kept.
 */
describe('convex shapes grown by a margin', () => {
  test.each([
    ['circle', { shape: 'circle', diameter: 20 }, PI * 100, 20 * PI],
    ['hexagon', { shape: 'regular-polygon', sides: 6, diameter: 20 }, 150 * sqrt(3), 60],
    ['arch', { shape: 'arch', width: 20, height: 30 }, 400 + 50 * PI, 60 + 10 * PI],
    ['tag', { shape: 'tag', width: 20, height: 40, shoulder: 6 }, 764, 120 - 24 + 12 * SQRT2],
  ])('%s', (_name, written, area, perimeter) => {
    for (const d of [0.5, 2, 5]) {
      const grown = areaOf(offset(outlineOf(shapeOf(written)), mm(d))) / mm(1) ** 2;
      // 0.02 mm, as is stated of offsets, all around
      expect(Math.abs(grown - (area + perimeter * d + PI * d ** 2))).toBeLessThan(
        0.02 * (perimeter + 2 * PI * d),
      );
    }
  });
});
