import type { CreasePattern } from '../creases/crease-pattern.ts';
import { boxOf, type FlatFace } from './flat-faces.ts';
import { heightOver, type LeafPlane, onPlane } from './leaf-planes.ts';
import { twiceArea } from './plane-overlap.ts';
import type { PocketPlace, Wall } from './pocket-place.ts';
import type { Pocket } from './pockets.ts';
import { areaOf, carry, carryDirection, cross, type Motion, type Point3, still } from './space.ts';

/** Contents that lie on a panel of a piece that is set up, with paper around them. */
export interface Standing {
  readonly pattern: CreasePattern;
  readonly faces: readonly FlatFace[];
  readonly planes: readonly LeafPlane[];
  readonly motions: readonly Motion[];
  /** The contents: thickness, and one item as it stands. */
  readonly stack: number;
  readonly item: { readonly width: number; readonly height: number } | undefined;
}

/** Less than this, in nanometres, is rounding. */
const SLIP = 1000;
/** Of the rays that look for a wall, at least this share must meet paper. */
const wallShare = 1 / 3;

/** The contents in the middle of a panel: nothing reaches into them, and paper stands where it is said to. */
export function boxIn(place: PocketPlace, standing: Standing): Pocket {
  const { pattern, faces, planes, motions, stack, item } = standing;
  const members = faces.filter(({ panel }) => panel === place.panel);
  const motion = motions[members[0]?.index ?? -1] ?? still;
  const corners = members.flatMap(({ index }) =>
    (pattern.faces[index]?.vertices ?? []).flatMap((vertex) => pattern.vertices[vertex] ?? []),
  );
  const { left, right, top, bottom } = boxOf(corners);
  const [width, height] = [right - left, bottom - top];
  const size = { width: item?.width ?? width, height: item?.height ?? height, depth: stack };
  const ground: LeafPlane = groundOf(motion, {
    x: left + (width - size.width) / 2,
    y: top + (height - size.height) / 2,
    z: 0,
  });
  const polygons = planes.flatMap((plane) =>
    plane.polygons.map((polygon, index) => ({
      panel: pattern.faces[plane.faces[index] ?? -1]?.panel ?? '',
      corners: polygon.map((corner) => ({ ...onPlane(ground, corner), z: heightOver(ground, corner) })),
    })),
  );
  const within = polygons.filter(({ corners: points }) => reachesInto(points, size));
  const missing = (place.walls ?? []).filter(
    (wall) =>
      !stands(
        wall,
        size,
        polygons.map((one) => one.corners),
      ),
  );
  return {
    name: place.name,
    width,
    height,
    box: boxOf(members.flatMap((member) => member.corners)),
    faults: [
      ...within.map(({ panel }) => `${panel} reaches into the ${place.name}`),
      ...missing.map((wall) => `no paper stands ${wordsFor[wall]} the ${place.name}`),
    ],
  };
}

const wordsFor: Readonly<Record<Wall, string>> = {
  left: 'at the left of',
  right: 'at the right of',
  top: 'above',
  bottom: 'below',
  over: 'over',
};

function groundOf(motion: Motion, corner: Point3): LeafPlane {
  const across = carryDirection(motion, { x: 1, y: 0, z: 0 });
  const down = carryDirection(motion, { x: 0, y: 1, z: 0 });
  const origin = carry(motion, corner);
  const box = { least: origin, most: origin };
  return { leaf: -1, faces: [], normal: cross(across, down), across, down, origin, polygons: [], ...box };
}

interface Size {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
}

/** Whether a polygon has a part inside the box from (0, 0, 0), clear of its sides. */
function reachesInto(corners: readonly Point3[], { width, height, depth }: Size): boolean {
  let rest = corners;
  for (const side of [
    ({ x }: Point3) => x - SLIP,
    ({ x }: Point3) => width - SLIP - x,
    ({ y }: Point3) => y - SLIP,
    ({ y }: Point3) => height - SLIP - y,
    ({ z }: Point3) => z - SLIP,
    ({ z }: Point3) => depth - SLIP - z,
  ])
    rest = clipped(rest, side);
  return rest.length > 0;
}

const clipped = (corners: readonly Point3[], side: (point: Point3) => number): readonly Point3[] =>
  corners.flatMap((p, index) => {
    const q = corners[(index + 1) % corners.length] ?? p;
    const [here, there] = [side(p), side(q)];
    const kept = here > 0 ? [p] : [];
    if (here > 0 === there > 0) return kept;
    const share = here / (here - there);
    return [
      ...kept,
      { x: p.x + share * (q.x - p.x), y: p.y + share * (q.y - p.y), z: p.z + share * (q.z - p.z) },
    ];
  });

const shares = [1 / 6, 1 / 2, 5 / 6];

/** Whether enough rays out of the box through one of its sides meet paper. */
function stands(
  wall: Wall,
  { width, height, depth }: Size,
  polygons: readonly (readonly Point3[])[],
): boolean {
  // the box in coordinates in which the wall is ahead, along the first
  const turn: Readonly<Record<Wall, (point: Point3) => Point3>> = {
    left: ({ x, y, z }) => ({ x: -x, y, z }),
    right: ({ x, y, z }) => ({ x: x - width, y, z }),
    top: ({ x, y, z }) => ({ x: -y, y: x, z }),
    bottom: ({ x, y, z }) => ({ x: y - height, y: x, z }),
    over: ({ x, y, z }) => ({ x: z - depth, y, z: x }),
  };
  const across = wall === 'left' || wall === 'right' || wall === 'over' ? height : width;
  const beyond = wall === 'over' ? width : depth;
  const turned = polygons.map((polygon) => polygon.map(turn[wall]));
  const rays = shares.flatMap((one) => shares.map((other) => ({ y: one * across, z: other * beyond })));
  const met = rays.filter((ray) => turned.some((polygon) => isMet(polygon, ray)));
  return met.length >= wallShare * rays.length;
}

/** Whether a ray along the first axis, out of the box's side, meets a polygon. */
function isMet(polygon: readonly Point3[], { y, z }: { readonly y: number; readonly z: number }): boolean {
  const flat = polygon.map((point) => ({ x: point.y, y: point.z }));
  const sign = Math.sign(twiceArea(flat));
  if (sign === 0 || Math.abs(twiceArea(flat)) < SLIP * SLIP) return false;
  const inside = flat.every((a, index) => {
    const b = flat[(index + 1) % flat.length] ?? a;
    return sign * ((b.x - a.x) * (z - a.y) - (b.y - a.y) * (y - a.x)) >= 0;
  });
  if (!inside) return false;
  const [p] = polygon;
  if (!p) return false;
  const normal = areaOf(polygon);
  const at = p.x - (normal.y * (y - p.y) + normal.z * (z - p.z)) / normal.x;
  return at >= -SLIP;
}
