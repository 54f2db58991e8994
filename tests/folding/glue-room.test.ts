import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxOf, type FlatFace } from '../../shared/folding/flat-faces.ts';
import type { Bond } from '../../shared/folding/glue-bonds.ts';
import { glueRoom } from '../../shared/folding/glue-room.ts';
import type { Point } from '../../shared/geometry/plane.ts';

/*
 * The room of a strip of 20 by 6 mm, its corner at 0, 0, between two large layers, with a third layer slipped in between
 * them that lies somewhere beside the strip. Millimetres; glue stays 1.5 mm from that layer.
 */
const mm = (value: number): number => value * 1e6;
const pointsOf = (corners: readonly (readonly [number, number])[]): Point[] =>
  corners.map(([x, y]) => ({ x: mm(x), y: mm(y) }));

const faceOf = (index: number, height: number, corners: readonly Point[]): FlatFace => ({
  index,
  panel: `layer ${index}`,
  corners,
  lies: { a: 1, b: 0, c: 0, d: 1, tx: 0, ty: 0 },
  turned: false,
  height,
  ...boxOf(corners),
});

const large = pointsOf([
  [-100, -100],
  [100, -100],
  [100, 100],
  [-100, 100],
]);
const strip = pointsOf([
  [-20, -6],
  [0, -6],
  [0, 0],
  [-20, 0],
]);

function roomBeside(slipped: readonly Point[]): readonly Point[] {
  const [owner, other] = [faceOf(0, 0, large), faceOf(1, 2, large)];
  const box = { ...boxOf(strip), corners: strip };
  const bond: Bond = {
    strip: { panel: owner.panel, face: 'inside', to: other.panel, ...boxOf(strip) },
    owner,
    other,
    box,
  };
  return glueRoom(bond, {
    faces: [owner, other, faceOf(2, 1, slipped)],
    corners: [[], [], []],
    neighbours: [[], [], []],
    plates: [[0], [1], [2]],
    joints: [],
    mouths: [],
    pockets: [],
  });
}

/** From a convex polygon to a point; 0 where it lies inside. */
function distanceTo(polygon: readonly Point[], { x, y }: Point): number {
  const sides = polygon.map((p, index) => [p, polygon[(index + 1) % polygon.length] ?? p] as const);
  if (sides.every(([p, q]) => (q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x) >= 0)) return 0;
  return Math.min(
    ...sides.map(([p, q]) => {
      const [dx, dy] = [q.x - p.x, q.y - p.y];
      const share = Math.min(1, Math.max(0, ((x - p.x) * dx + (y - p.y) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(x - p.x - share * dx, y - p.y - share * dy);
    }),
  );
}

const corner = (x: number, y: number): Point[] =>
  pointsOf([
    [x, y],
    [x + 30, y],
    [x + 30, y + 30],
    [x, y + 30],
  ]);

describe('the room of a strip beside a layer that is slipped in', () => {
  const apart = (slipped: readonly Point[]) => {
    const room = roomBeside(slipped);
    // both are convex, so that a corner of one of them is nearest
    const gaps = [
      ...slipped.map((point) => distanceTo(room, point)),
      ...room.map((point) => distanceTo(slipped, point)),
    ];
    const holds = strip.every((point) => distanceTo(room, point) <= 2);
    return { gap: Math.min(...gaps) / 1e6, holds };
  };

  test('keeps clear of one that lies off its corner, nearer along each axis than glue may come', () => {
    // 1.2 mm each way are 1.70 mm
    expect(apart(corner(1.2, 1.2))).toEqual({ gap: expect.closeTo(1.5, 4), holds: true });
  });

  test('ends at the strip where the layer comes nearer than that', () => {
    // 1 mm each way are 1.41 mm
    expect(apart(corner(1, 1))).toEqual({ gap: expect.closeTo(Math.SQRT2, 4), holds: true });
  });

  test('holds the strip and keeps from the layer what the strip keeps, wherever it lies', () => {
    fc.assert(
      fc.property(
        fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) }),
        ({ x, y }) => {
          fc.pre(x + y > 0);
          const { gap, holds } = apart(corner(x / 10, y / 10));
          expect(holds).toBe(true);
          expect(gap).toBeGreaterThan(Math.min(1.5, Math.hypot(x / 10, y / 10)) - 1e-4);
        },
      ),
    );
  });
});
