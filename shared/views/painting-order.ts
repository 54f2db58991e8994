import { shareGround } from '../folding/plane-overlap.ts';
import type { Side } from '../folding/regions.ts';
import { areaOf, minus, type Point3, times } from '../folding/space.ts';
import type { Point } from '../geometry/plane.ts';

/** A leaf as it is seen: faces in one plane, from the farthest to the nearest. */
interface SeenLeaf {
  readonly faces: readonly number[];
  readonly corners: readonly Point3[];
  /** Corners of each face on the page. */
  readonly polygons: readonly (readonly Point[])[];
  /** Toward the viewer, of length 1; none for a leaf that is seen edge-on. */
  readonly normal: Point3 | undefined;
  readonly depth: number;
}

/** Less than this, in nanometres, is rounding. */
const SLIP = 2000;
/** A leaf whose normal leans less than this toward the viewer is seen edge-on. */
const EDGE_ON = 1e-6;

/**
 * The faces from the farthest to the nearest, leaf by leaf: a leaf comes after those that lie behind its plane; where
 * planes do not tell, the farther one on the whole comes first.
 * @param order faces of the flat form from the lowest layer up
 * @param nearer whether one face lies on another, nearer to the viewer, where glue holds two leaves together
 */
export function paintingOrder(
  order: readonly number[],
  leaves: readonly number[],
  sides: readonly Side[],
  corners: readonly (readonly Point3[])[],
  nearer: (one: number, other: number) => boolean | undefined = () => undefined,
): readonly number[] {
  const seen = [...new Set(leaves)].map((leaf): SeenLeaf => {
    const own = order.filter((face) => leaves[face] === leaf);
    const points = own.flatMap((face) => corners[face] ?? []);
    return {
      faces: own.some((face) => sides[face] === 'outside') ? own.toReversed() : own,
      corners: points,
      polygons: own.map((face) => (corners[face] ?? []).map(({ x, y }) => ({ x, y }))),
      normal: normalOf(own.flatMap((face) => (corners[face] ? [corners[face]] : []))),
      depth: points.reduce((sum, { z }) => sum + z, 0) / points.length,
    };
  });
  const left = seen.toSorted((one, other) => one.depth - other.depth);
  const placed: number[] = [];
  while (left.length > 0) {
    const free = left.findIndex((leaf) =>
      left.every((other) => other === leaf || !isBehind(other, leaf, nearer)),
    );
    const [next] = left.splice(Math.max(0, free), 1);
    placed.push(...(next?.faces ?? []));
  }
  return placed;
}

/** The normal of the plane in which polygons lie, toward the viewer: along the largest one's area (Newell's method). */
function normalOf(polygons: readonly (readonly Point3[])[]): Point3 | undefined {
  const areas = polygons.map(areaOf);
  const sizeOf = ({ x, y, z }: Point3) => Math.hypot(x, y, z);
  const largest = areas.toSorted((one, other) => sizeOf(other) - sizeOf(one))[0];
  if (!largest || Math.abs(largest.z) < EDGE_ON * sizeOf(largest)) return undefined;
  const scale = Math.sign(largest.z) / sizeOf(largest);
  return { x: largest.x * scale, y: largest.y * scale, z: largest.z * scale };
}

/** Whether a leaf must be painted before another. */
function isBehind(
  one: SeenLeaf,
  other: SeenLeaf,
  nearer: (one: number, other: number) => boolean | undefined,
): boolean {
  if (!overlapOnPage(one, other)) return false;
  const side = sideOf(one, other) ?? negated(sideOf(other, one));
  if (side !== undefined) return side > 0;
  for (const a of one.faces)
    for (const b of other.faces) {
      const known = nearer(a, b);
      if (known !== undefined) return !known;
    }
  return false;
}

const negated = (side: number | undefined): number | undefined => (side === undefined ? undefined : -side);

/** On which side of a leaf's plane another lies: 1 nearer to the viewer, -1 behind; undefined on both or on neither. */
function sideOf({ normal, corners: [origin] }: SeenLeaf, { corners }: SeenLeaf): 1 | -1 | undefined {
  if (!normal || !origin) return undefined;
  const heights = corners.map((corner) => times(normal, minus(corner, origin)));
  const [least, most] = [Math.min(...heights), Math.max(...heights)];
  if (least >= -SLIP && most > SLIP) return 1;
  if (most <= SLIP && least < -SLIP) return -1;
  return undefined;
}

function overlapOnPage(one: SeenLeaf, other: SeenLeaf): boolean {
  const near = (['x', 'y'] as const).every((axis) => {
    const [a, b] = [one, other].map(({ corners }) => corners.map((corner) => corner[axis]));
    if (!a || !b) return false;
    return Math.max(...a) > Math.min(...b) + SLIP && Math.max(...b) > Math.min(...a) + SLIP;
  });
  return (
    near && one.polygons.some((polygon) => other.polygons.some((beside) => shareGround(polygon, beside)))
  );
}
