import { describe, expect, test } from 'vitest';
import type { Point3 } from '../../shared/folding/space.ts';
import { paintingOrder } from '../../shared/views/painting-order.ts';

/*
 * Leaves of one face each, as a viewer sees them: x right, y down, z toward the viewer, in nanometres.
 */

/** A square of 10 mm on the page, its left side at one depth and its right side at another. */
const leaning = (left: number, nearLeft: number, nearRight: number): readonly Point3[] => {
  const at = (x: number, y: number, z: number) => ({ x: x * 1e6, y: y * 1e6, z: z * 1e6 });
  return [
    at(left, 0, nearLeft),
    at(left + 10, 0, nearRight),
    at(left + 10, 10, nearRight),
    at(left, 10, nearLeft),
  ];
};

function orderOf(faces: readonly (readonly Point3[])[]): readonly number[] {
  const indices = faces.map((_, index) => index);
  const sides = faces.map(() => 'inside' as const);
  return paintingOrder(indices, indices, sides, faces);
}

describe('leaves are painted', () => {
  test('from the farthest to the nearest', () => {
    expect(orderOf([leaning(0, 5, 5), leaning(0, 0, 0), leaning(0, 9, 9)])).toEqual([1, 0, 2]);
  });

  test('by their planes where their middles would tell otherwise', () => {
    // a wall that rises toward the viewer at its right end, and a small piece just before its left end
    const wall = leaning(0, 0, 40);
    const piece = leaning(-8, 10, 10);
    expect(orderOf([wall, piece])).toEqual([0, 1]);
    expect(orderOf([piece, wall])).toEqual([1, 0]);
  });

  test('in any order where they do not cover each other', () => {
    expect(orderOf([leaning(0, 9, 9), leaning(50, 0, 0)])).toEqual([1, 0]);
  });

  test('each with its own layers, turned round where the leaf is seen from outside', () => {
    const faces = [leaning(0, 0, 0), leaning(0, 0, 0), leaning(0, 5, 5)];
    const leaves = [0, 0, 1];
    expect(paintingOrder([0, 1, 2], leaves, ['inside', 'inside', 'inside'], faces)).toEqual([0, 1, 2]);
    expect(paintingOrder([0, 1, 2], leaves, ['outside', 'outside', 'inside'], faces)).toEqual([1, 0, 2]);
  });

  test('as glue holds them where they lie in one plane', () => {
    const faces = [leaning(0, 0, 0), leaning(0, 0, 0)];
    const sides = ['inside', 'inside'] as const;
    const nearer = (near: number) => (one: number) => one === near;
    expect(paintingOrder([0, 1], [0, 1], sides, faces, nearer(0))).toEqual([1, 0]);
    expect(paintingOrder([0, 1], [0, 1], sides, faces, nearer(1))).toEqual([0, 1]);
  });
});
