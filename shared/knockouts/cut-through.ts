import type { FlatFace } from '../folding/flat-faces.ts';
import type { Side } from '../folding/regions.ts';
import { signedArea } from '../geometry/area.ts';
import { boundsOf, overlap } from '../geometry/bounds.ts';
import { intersect, subtract, unite } from '../geometry/clip/combine.ts';
import type { Shape } from '../geometry/contour.ts';
import { moveShape } from '../geometry/move-shape.ts';
import { inverse, type Point } from '../geometry/plane.ts';
import { polygon } from '../geometry/walk.ts';
import { grownPolygon } from './grown-polygon.ts';
import { coversOf, edgeKinds, isAlong, type Layers, levelGroups } from './layers.ts';

/** What a knockout takes from faces that lie level beside each other. */
export interface LayerCut {
  readonly faces: readonly FlatFace[];
  /** The same figure where the faces lie in the flat form, and on the open blank. */
  readonly onForm: Shape;
  readonly onBlank: Shape;
}

/**
 * A face reaches this much over its folds and borders, in nanometres, so that what is cut from two faces that share a
 * fold overlaps and grows together again on the blank, and what is cut at the border leaves no hair of paper there.
 */
const OVER = 2000;

/** What clipping leaves of a figure that is smaller than this, in nm² (0.1 mm²), no tool cuts. */
const CRUMB = 0.1e12;

/**
 * Cuts a figure, given where it lies on the flat form, out of faces. A figure that lies within faces that are level
 * beside each other comes out as it is; else it is clipped to them.
 * @param chosen indices of the faces that may be cut
 * @param seenFrom cuts only what is seen of them from that side, where no other of them covers it
 */
export function cutThrough(
  shape: Shape,
  chosen: ReadonlySet<number>,
  layers: Layers,
  seenFrom?: Side,
): readonly LayerCut[] {
  const bounds = boundsOf(shape);
  const near = new Set([...chosen].filter((index) => overlap(layers.faces[index] ?? bounds, bounds)));
  return levelGroups(layers, near).flatMap((faces) => {
    const region = unite(faces.map((face) => regionOf(face, layers, chosen, seenFrom)));
    const whole = new Set(shape);
    const onForm = intersect(shape, region).filter(
      (contour) => whole.has(contour) || Math.abs(signedArea(contour)) >= CRUMB,
    );
    const [first] = faces;
    if (onForm.length === 0 || !first) return [];
    return [{ faces, onForm, onBlank: moveShape(onForm, inverse(first.lies)) }];
  });
}

/** Where a face can be cut: all of it, or what is seen of it from a side. */
function regionOf(
  face: FlatFace,
  layers: Layers,
  among: ReadonlySet<number>,
  seenFrom: Side | undefined,
): Shape {
  const kinds = edgeKinds(layers, face);
  const whole = grown(face, (edge) => (kinds[edge] === 'level' ? 0 : OVER));
  if (seenFrom === undefined) return whole;
  // a cover reaches over an edge that it shares with the face, or a hair of the face would be seen beyond it
  const covers = coversOf(layers, among, face, seenFrom).map((cover) =>
    grown(cover, (_, from, to) => (isAlong(from, to, face) ? 2 * OVER : 0)),
  );
  return covers.length === 0 ? whole : subtract(whole, unite(covers));
}

function grown({ corners, turned }: FlatFace, by: (edge: number, from: Point, to: Point) => number): Shape {
  const count = corners.length;
  const distances = corners.map((corner, edge) => by(edge, corner, corners[(edge + 1) % count] ?? corner));
  // a face that lies turned over is walked the other way: the edge that led to a corner now leaves it
  return [
    polygon(
      turned
        ? grownPolygon(corners.toReversed(), [...distances.slice(0, -1).toReversed(), distances.at(-1) ?? 0])
        : grownPolygon(corners, distances),
    ),
  ];
}
