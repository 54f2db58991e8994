import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { facesAcross } from '../../shared/folding/faces-across.ts';
import { foldRigid } from '../../shared/folding/fold-rigid.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { carry, hinge, type Point3 } from '../../shared/folding/space.ts';
import { easySleeve, everyKind, foldedFrom, sleeves } from '../support/sleeves.ts';

/*
 * The closed folder by hand. The sleeve lies flat at x 30 … 240, y 60 … 210 mm with its inside up. The spine, x
 * 130 … 140, stays on the table; the covers rise toward the viewer at its two edges, by 90° each. So the front
 * stands in the plane x = 130 and the back in x = 140, 10 mm apart, as far as the spine is wide; both are 150 mm
 * high (y 60 … 210) and rise by the panel's width, 100 mm. What was x mm from the spine stands x mm above it.
 */

function closed({ pattern }: Folded) {
  const root = pattern.faces.findIndex(({ panel }) => panel === 'spine');
  const form = foldRigid(pattern, facesAcross(pattern), root);
  const corners = (panel: string): readonly Point3[] =>
    pattern.faces.flatMap((face) =>
      face.panel === panel ? face.vertices.flatMap((vertex) => form.vertices[vertex] ?? []) : [],
    );
  const inMm = (points: readonly Point3[]) =>
    points.map(({ x, y, z }) => [x, y, z].map((nm) => Math.round(nm) / 1e6 + 0));
  return { ...form, corners, inMm: (panel: string) => inMm(corners(panel)), all: inMm(form.vertices) };
}

const spread = (numbers: readonly number[]) => [Math.min(...numbers), Math.max(...numbers)];

describe.each(everyKind)('closed: corners $corners, hems $hem.turn, seam $seam', (raw) => {
  const folded = foldedFrom(raw);
  const { inMm, all, residual } = closed(folded);

  test('has its covers parallel, the spine apart', () => {
    expect(inMm('front').every(([x]) => x === 130)).toBe(true);
    expect(inMm('back').every(([x]) => x === 140)).toBe(true);
    expect(inMm('spine').every(([, , z]) => z === 0)).toBe(true);
  });

  test('is 10 × 150 × 100 mm over all', () => {
    expect(spread(all.map(([x = Number.NaN]) => x))).toEqual([130, 140]);
    expect(spread(all.map(([, y = Number.NaN]) => y))).toEqual([60, 210]);
    expect(spread(all.map(([, , z = Number.NaN]) => z))).toEqual([0, 100]);
    expect(residual).toBeLessThan(1);
  });

  test('has the corners of its covers where a ruler finds them', () => {
    const front = [
      [130, 60, 0],
      [130, 210, 0],
      [130, 60, 100],
      [130, 210, 100],
    ];
    expect(inMm('front').toSorted()).toEqual(front.toSorted());
    expect(inMm('back').toSorted()).toEqual(front.map(([, y, z]) => [140, y, z]).toSorted());
  });

  test('has hems and flaps on its covers', () => {
    // the hem, 30 mm from the panel's outer edge; the seam 60 and 110 mm from the two folds
    expect(spread(inMm('left hem').map(([, , z = Number.NaN]) => z))).toEqual([70, 100]);
    expect(spread(inMm('top flap, front').map(([, y = Number.NaN]) => y))).toEqual([60, 120]);
    expect(spread(inMm('bottom flap, back').map(([, y = Number.NaN]) => y))).toEqual([100, 210]);
    expect(inMm('bottom flap, right hem').every(([x]) => x === 140)).toBe(true);
  });
});

test('bent the other way, the covers would hang below the table', () => {
  const { pattern } = foldedFrom(easySleeve);
  const root = pattern.faces.findIndex(({ panel }) => panel === 'spine');
  const { vertices } = foldRigid(pattern, facesAcross(pattern), root, ({ foldAngle }) =>
    Math.abs(foldAngle) === 90 ? -foldAngle : foldAngle,
  );
  expect(spread(vertices.map(({ z }) => Math.round(z) / 1e6 + 0))).toEqual([-100, 0]);
});

test('a crease that is bent by less than the others on its line leaves a gap, which the residual shows', () => {
  const { pattern } = foldedFrom(easySleeve);
  const one = pattern.edges.findIndex(({ foldAngle }) => foldAngle === 90);
  const slack = {
    ...pattern,
    edges: pattern.edges.map((edge, index) => (index === one ? { ...edge, foldAngle: 60 } : edge)),
  };
  const root = pattern.faces.findIndex(({ panel }) => panel === 'spine');
  const { residual } = foldRigid(slack, facesAcross(slack), root);
  // 30° short at the spine: the panel's far edge, 100 mm away, is 2·100·sin 15° = 51.76 mm from where it should be
  expect(residual / 1e6).toBeGreaterThan(50);
});

test('any sleeve closes to spine × panel height × panel width', () => {
  fc.assert(
    fc.property(sleeves, (raw) => {
      const folded = foldedFrom(raw);
      const { vertices, residual } = closed(folded);
      const { 'panel.width': width = 0, 'panel.height': height = 0, spine = 0 } = folded.plan.dimensions;
      const sizes = (['x', 'y', 'z'] as const).map((axis) => {
        const [from = 0, to = 0] = spread(vertices.map((point) => point[axis]));
        return to - from;
      });
      for (const [index, size] of [spine, height, width].entries())
        expect(Math.abs((sizes[index] ?? 0) - size)).toBeLessThan(2);
      expect(residual).toBeLessThan(1);
    }),
    { numRuns: 100, seed: 54 },
  );
});

describe('a hinge along the y axis, seen with y down', () => {
  // walking down the screen, from (0, 0) to (0, 1), what lies to the right of the walker is at negative x
  const down = (degrees: number) => hinge({ x: 0, y: 0 }, { x: 0, y: 1 }, degrees);
  const near = (point: Point3, [x, y, z]: readonly [number, number, number]) => {
    expect(point.x).toBeCloseTo(x, 12);
    expect(point.y).toBeCloseTo(y, 12);
    expect(point.z).toBeCloseTo(z, 12);
  };

  test('lifts what lies to the right of it toward the viewer', () => {
    near(carry(down(90), { x: -2, y: 5, z: 0 }), [0, 5, 2]);
    near(carry(down(60), { x: -2, y: 5, z: 0 }), [-1, 5, Math.sqrt(3)]);
    near(carry(down(180), { x: -2, y: 5, z: 0 }), [2, 5, 0]);
    near(carry(down(-90), { x: -2, y: 5, z: 0 }), [0, 5, -2]);
  });

  test('keeps itself in place', () => {
    near(carry(down(37), { x: 0, y: -4, z: 0 }), [0, -4, 0]);
  });
});
