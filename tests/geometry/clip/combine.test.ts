import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthOf } from '../../../shared/geometry/arc-length.ts';
import { ellipse } from '../../../shared/geometry/arcs.ts';
import { areaOf, isOuter, signedArea } from '../../../shared/geometry/area.ts';
import { intersect, resolve, subtract, unite } from '../../../shared/geometry/clip/combine.ts';
import type { Contour, Shape } from '../../../shared/geometry/contour.ts';
import { isInside, windingAround } from '../../../shared/geometry/inside.ts';
import { moveContour, moveShape, shift, turn } from '../../../shared/geometry/move-shape.ts';
import type { Point } from '../../../shared/geometry/plane.ts';
import { rectangleAt } from '../../../shared/geometry/polygons.ts';
import { polygon, reverse } from '../../../shared/geometry/walk.ts';
import { mm } from '../../../shared/lengths/nanometres.ts';
import { blobs, distanceTo, millimetres, motions, sampled, stretchCount } from '../../support/contours.ts';

const circle = (x: number, y: number, diameter: number): Contour =>
  ellipse({ x: mm(x), y: mm(y) }, mm(diameter / 2), mm(diameter / 2));
const square = (x: number, y: number, side: number): Contour =>
  moveContour(polygon(rectangleAt(mm(side), mm(side))), shift(mm(x), mm(y)));

/** Two figures about each other, each a blob, one with a round counter. */
const pairs = fc
  .record({ one: blobs, other: blobs, by: motions })
  .map(({ one, other, by }): [Shape, Shape] => [[one, reverse(circle(0, 0, 4))], [moveContour(other, by)]]);
const places = fc.array(fc.record({ x: millimetres(-40, 40), y: millimetres(-40, 40) }), {
  minLength: 10,
  maxLength: 10,
});

/** Clipping moves edges by at most 2.5 µm: what an area may be off. */
const slack = (...shapes: Shape[]): number =>
  shapes.flat().reduce((sum, contour) => sum + lengthOf(contour), 0) * 2500 + 1;

const isEvenOddInside = (shape: Shape, p: Point): boolean =>
  shape.reduce((sum, contour) => sum + windingAround(contour, p), 0) === 1;

describe('set operations', () => {
  test('cover just the points that they should', () => {
    fc.assert(
      fc.property(pairs, places, ([a, b], points) => {
        const [united, common, left] = [unite([a, b]), intersect(a, b), subtract(a, b)];
        const edges = [...a, ...b].map((contour) => sampled(contour, 60));
        for (const p of points.filter((point) => distanceTo(edges, point) > mm(0.05))) {
          const [inA, inB] = [isInside(a, p), isInside(b, p)];
          // winding numbers of 0 and 1 alone: the nonzero and the even-odd rule agree
          expect(isEvenOddInside(united, p)).toBe(inA || inB);
          expect(isEvenOddInside(common, p)).toBe(inA && inB);
          expect(isEvenOddInside(left, p)).toBe(inA && !inB);
          expect([isInside(united, p), isInside(common, p)]).toEqual([inA || inB, inA && inB]);
        }
      }),
    );
  });

  test('share out the area: A ∪ B and A ∩ B make up A and B; A − B and A ∩ B make up A', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const common = areaOf(intersect(a, b));
        expect(Math.abs(areaOf(unite([a, b])) + common - areaOf(a) - areaOf(b))).toBeLessThan(slack(a, b));
        expect(Math.abs(areaOf(subtract(a, b)) + common - areaOf(a))).toBeLessThan(slack(a, b));
      }),
    );
  });

  test('give the same figure whichever operand comes first', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const [one, other] = [unite([a, b]), unite([b, a])];
        expect(one).toHaveLength(other.length);
        expect(Math.abs(areaOf(one) - areaOf(other))).toBeLessThan(slack(a, b) / 100);
        expect(Math.abs(areaOf(intersect(a, b)) - areaOf(intersect(b, a)))).toBeLessThan(slack(a, b) / 100);
      }),
    );
  });

  test('do not care how both lie on the sheet', () => {
    fc.assert(
      fc.property(pairs, motions, ([a, b], by) => {
        const moved = unite([moveShape(a, by), moveShape(b, by)]);
        expect(Math.abs(areaOf(moved) - areaOf(unite([a, b])))).toBeLessThan(slack(a, b));
      }),
    );
  });

  test('keep curves: few stretches come out, a cut makes two of one', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        expect(stretchCount(unite([a, b]))).toBeLessThan(3 * stretchCount([...a, ...b]));
      }),
    );
  });

  test('the check of areas fails where an edge is 20 µm off', () => {
    const [a, b] = [[circle(0, 0, 20)], [circle(10, 0, 20)]];
    const grown = [circle(0, 0, 20.04)];
    const common = areaOf(intersect(a, b));
    expect(Math.abs(areaOf(unite([grown, b])) + common - areaOf(a) - areaOf(b))).toBeGreaterThan(slack(a, b));
  });
});

describe('contours that meet no other', () => {
  const [here, there] = [circle(0, 0, 20), circle(100, 0, 20)];

  test('come back as the same objects where bounds are apart', () => {
    expect(unite([[here], [there]])).toEqual([here, there]);
    expect(unite([[here], [there]]).every((contour) => contour === here || contour === there)).toBe(true);
    expect(subtract([here], [there])[0]).toBe(here);
    expect(intersect([here], [there])).toEqual([]);
  });

  test('come back as the same objects where one lies in the other', () => {
    const inner = circle(2, 3, 5);
    const cut = subtract([here], [inner]);
    expect(cut[0]).toBe(here);
    expect(cut.slice(1)).toEqual([reverse(inner)]);
    expect(intersect([here], [inner])[0]).toBe(inner);
    expect(unite([[here], [inner]])[0]).toBe(here);
    expect(unite([[here], [inner]])).toHaveLength(1);
  });

  test('an island in a counter stays what it is', () => {
    const frame: Shape = [here, reverse(circle(0, 0, 12))];
    const island = circle(0, 0, 5);
    const both = unite([frame, [island]]);
    expect(both).toHaveLength(3);
    expect(both).toEqual(expect.arrayContaining([...frame, island]));
  });

  test('that lie on each other are one', () => {
    const mirrored = moveContour(here, { a: -1, b: 0, c: 0, d: 1, tx: 0, ty: 0 });
    const nudged = moveContour(here, shift(40, -30));
    for (const other of [here, mirrored, nudged]) {
      expect(unite([[here], [other]])[0]).toBe(here);
      expect(subtract([here], [other])).toEqual([]);
    }
  });
});

describe('by hand', () => {
  test('two squares of 10 mm, 5 mm apart both ways', () => {
    const [a, b] = [[square(0, 0, 10)], [square(5, 5, 10)]];
    expect(areaOf(unite([a, b]))).toBe(mm(1) ** 2 * 175);
    expect(areaOf(intersect(a, b))).toBe(mm(1) ** 2 * 25);
    expect(areaOf(subtract(a, b))).toBe(mm(1) ** 2 * 75);
    expect(unite([a, b])[0]?.stretches).toHaveLength(8);
  });

  test('two squares with a side in common are one rectangle', () => {
    const one = unite([[square(0, 0, 10)], [square(10, 0, 10)]]);
    expect(one).toHaveLength(1);
    expect(areaOf(one)).toBe(mm(1) ** 2 * 200);
  });

  test('two circles of radius r, r apart: the lens is (2π/3 − √3/2)·r²', () => {
    const lens = intersect([circle(0, 0, 20)], [circle(10, 0, 20)]);
    expect(areaOf(lens) / mm(10) ** 2 / ((2 * Math.PI) / 3 - Math.sqrt(3) / 2)).toBeCloseTo(1, 3);
    expect(lens[0]?.stretches).toHaveLength(4);
  });

  test('nothing and something', () => {
    const one: Shape = [circle(0, 0, 20)];
    expect([unite([]), unite([[], one]), intersect(one, []), subtract([], one)]).toEqual([[], one, [], []]);
    expect(subtract(one, [])).toEqual(one);
  });
});

describe('contours of any kind', () => {
  const bowTie = polygon([
    { x: 0, y: 0 },
    { x: mm(20), y: mm(10) },
    { x: mm(20), y: 0 },
    { x: 0, y: mm(10) },
  ]);

  test('one that crosses itself becomes two triangles of 50 mm² each', () => {
    const resolved = resolve([bowTie], 'nonzero');
    expect(resolved.map((contour) => signedArea(contour) / mm(1) ** 2)).toEqual([50, 50]);
  });

  test('one in another is a counter by the even-odd rule whichever way it runs, by nonzero only backward', () => {
    const [outer, inner] = [circle(0, 0, 20), circle(0, 0, 10)];
    const areas = [
      resolve([outer, inner], 'even-odd'),
      resolve([reverse(outer), inner], 'even-odd'),
      resolve([outer, inner], 'nonzero'),
      resolve([outer, reverse(inner)], 'nonzero'),
      resolve([reverse(outer), inner], 'nonzero'),
    ].map((shape) => Math.round(areaOf(shape) / mm(5) ** 2 / Math.PI));
    expect(areas).toEqual([3, 3, 4, 3, 3]);
  });

  test('what runs the wrong way round is turned, and curves stay as they are', () => {
    const outer = circle(0, 0, 20);
    const [resolved] = resolve([reverse(outer)], 'nonzero');
    expect(resolved && isOuter(resolved)).toBe(true);
    expect(resolved).toEqual(outer);
  });

  test('every blob with itself turned about is one figure that holds both', () => {
    fc.assert(
      fc.property(blobs, fc.double({ min: 1, max: 359, noNaN: true }), (blob, degrees) => {
        const turned = moveContour(blob, turn(degrees));
        const both = resolve([blob, turned], 'nonzero');
        expect(both.filter(isOuter)).toHaveLength(1);
        expect(areaOf(both)).toBeGreaterThan(Math.max(signedArea(blob), signedArea(turned)) - slack([blob]));
        expect(isInside(both, { x: 0, y: 0 })).toBe(true);
      }),
    );
  });

  test('dust is left out', () => {
    expect(resolve([square(0, 0, 0.0001)], 'nonzero')).toEqual([]);
    const sliver = polygon([
      { x: 0, y: 0 },
      { x: mm(10), y: 0 },
      { x: mm(10), y: 500 },
    ]);
    expect(resolve([sliver], 'nonzero')).toEqual([]);
  });
});
