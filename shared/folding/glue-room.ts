import { glueKeepOut } from '../creases/glue-keep-out.ts';
import { boxCorners } from '../geometry/bounds.ts';
import { partBeside } from '../geometry/part-beside.ts';
import type { Point } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import { boxOf, type FlatFace, TOUCH } from './flat-faces.ts';
import type { Bond } from './glue-bonds.ts';
import type { Joint } from './joints.ts';
import { isFoldedAt, liesAcross, type Mouth } from './mouths.ts';
import type { Plates } from './plates.ts';
import { isLevel } from './pocket-place.ts';
import { besideGlue, joins, type Pocket } from './pockets.ts';
import { liesUnder, type Placed } from './strips.ts';

/** A folded sheet with all that glue must keep away from. */
export interface Surroundings {
  readonly faces: readonly FlatFace[];
  /** Of each face, as indices of the sheet's vertices. */
  readonly corners: readonly (readonly number[])[];
  readonly neighbours: Neighbours;
  readonly plates: Plates;
  readonly joints: readonly Joint[];
  readonly mouths: readonly Mouth[];
  readonly pockets: readonly Pocket[];
}

/**
 * Where a strip's glue may lie: around it, on both of the layers that it holds, as far from their edges and scores as glue
 * stays, clear of mouths, of what lies in the pocket, and of layers that are slipped in between.
 * @returns a convex polygon of the finished flat form that holds the strip
 */
export function glueRoom(bond: Bond, around: Surroundings): readonly Point[] {
  const { box } = bond;
  const plates = [bond.owner, bond.other].map(({ index }) => around.plates[index] ?? [index]);
  const [one, other] = plates.map((plate) =>
    boxOf(plate.flatMap((face) => around.faces[face]?.corners ?? [])),
  );
  if (!one || !other) throw new Error('a bond has two layers');
  let room: readonly Point[] = boxCorners({
    left: Math.max(one.left, other.left),
    right: Math.min(one.right, other.right),
    top: Math.max(one.top, other.top),
    bottom: Math.min(one.bottom, other.bottom),
  });
  for (const { shape, distance } of obstaclesOf(bond, plates, around)) {
    const line = lineBetween(shape, box, distance);
    room = partBeside(room, line.from, line.to, 1);
  }
  return room;
}

/** Something convex that glue keeps away from: a side of paper, a layer, a pocket's inside. */
interface Obstacle {
  readonly shape: readonly Point[];
  readonly distance: number;
}

function obstaclesOf(
  bond: Bond,
  plates: readonly (readonly number[])[],
  { faces, corners, neighbours, joints, mouths, pockets }: Surroundings,
): readonly Obstacle[] {
  const { owner, other, box } = bond;
  const sides = plates.flat().flatMap((index): Obstacle[] => {
    const face = faces[index];
    if (!face) return [];
    return (corners[index] ?? []).flatMap((vertex, at) => {
      const across = neighbours[index]?.find(({ from }) => from === vertex);
      const [p, q] = [face.corners[at], face.corners[at + 1] ?? face.corners[0]];
      if (!p || !q || across?.edge.letter === 'F') return [];
      const reach = across ? glueKeepOut.score : glueKeepOut.edge;
      // the side of a convex layer that the strip lies on bounds all of it
      const shape = liesUnder(box, face) ? along(p, q) : [p, q];
      return [{ shape, distance: reach }];
    });
  });
  const [low, high] = [owner.height, other.height].toSorted((p, q) => p - q);
  const between = faces
    .filter(
      ({ index, height }) => height > (low ?? 0) && height < (high ?? 0) && !plates.flat().includes(index),
    )
    .map((face): Obstacle => ({ shape: face.corners, distance: glueKeepOut.edge }));
  const atMouths = mouths
    .filter((mouth) => liesAcross(mouth, box) && !isFoldedAt(mouth, owner, other, joints))
    .map(({ mouth, at }): Obstacle => {
      const line = isLevel(mouth)
        ? along({ x: 0, y: at }, { x: 1, y: at })
        : along({ x: at, y: 0 }, { x: at, y: 1 });
      return { shape: line, distance: glueKeepOut.mouth };
    });
  const inside = mouths.flatMap((mouth): Obstacle[] => {
    const pocket = joins(bond, mouth) && pockets.find(({ name }) => name === mouth.name);
    return pocket ? [{ shape: boxCorners(pocket.box), distance: besideGlue }] : [];
  });
  return [...sides, ...between, ...atMouths, ...inside];
}

/** Far beyond any sheet, in nanometres. */
const FAR = 1e10;

/** The line through two points, as far as it matters. */
function along(p: Point, q: Point): readonly [Point, Point] {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const [x, y] = [((q.x - p.x) / length) * FAR, ((q.y - p.y) / length) * FAR];
  return [
    { x: p.x - x, y: p.y - y },
    { x: p.x + x, y: p.y + y },
  ];
}

/**
 * A line at a distance from something convex, with the strip to its right: square to an axis or along one of its sides,
 * whichever leaves the strip most room, or square to the way between its nearest corners. Where none of them leaves the
 * strip that distance, the line is as far away as the strip.
 */
function lineBetween(
  shape: readonly Point[],
  { corners }: Placed,
  distance: number,
): { readonly from: Point; readonly to: Point } {
  const normals = [
    ...shape.flatMap((p, index) => normalsOf(p, shape[(index + 1) % shape.length] ?? p)),
    ...axes,
  ];
  const isClear = ({ gap }: Parting) => gap >= distance - TOUCH;
  const straight = widest(normals, shape, corners);
  // a slanting line takes more of the room
  const best = isClear(straight)
    ? straight
    : widest([...normals, ...betweenNearest(shape, corners)], shape, corners);
  const { normal, reach } = best;
  const depth = reach + (isClear(best) ? distance : best.gap);
  const from = { x: normal.x * depth, y: normal.y * depth };
  return { from, to: { x: from.x + normal.y * 1e6, y: from.y - normal.x * 1e6 } };
}

/** How far apart something and a strip are along a normal, below 0 where they overlap, and how far it reaches. */
interface Parting {
  readonly normal: Point;
  readonly reach: number;
  readonly gap: number;
}

function widest(normals: readonly Point[], shape: readonly Point[], corners: readonly Point[]): Parting {
  let best: Parting = { normal: { x: 1, y: 0 }, reach: 0, gap: -Infinity };
  for (const normal of normals) {
    const depth = ({ x, y }: Point) => normal.x * x + normal.y * y;
    const reach = Math.max(...shape.map(depth));
    const gap = Math.min(...corners.map(depth)) - reach;
    if (gap > best.gap) best = { normal, reach, gap };
  }
  return best;
}

/** The way from the corner of a shape to the corner of a strip that is nearest to it; none where they meet. */
function betweenNearest(shape: readonly Point[], corners: readonly Point[]): readonly Point[] {
  let [nearest, normal] = [Infinity, { x: 0, y: 0 }];
  for (const p of shape) {
    for (const q of corners) {
      const length = Math.hypot(q.x - p.x, q.y - p.y);
      if (length >= nearest) continue;
      nearest = length;
      normal = { x: (q.x - p.x) / length, y: (q.y - p.y) / length };
    }
  }
  return nearest > TOUCH ? [normal] : [];
}

const axes: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
];

function normalsOf(p: Point, q: Point): readonly Point[] {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const length = Math.hypot(dx, dy);
  if (length === 0) return [];
  return [
    { x: -dy / length, y: dx / length },
    { x: dy / length, y: -dx / length },
  ];
}
