import { Clipper64, ClipType, FillRule, type Path64, type Paths64, PathType } from 'clipper2-ts';
import type { Contour, Shape } from '../contour.ts';
import { clustersOf, type Part } from './clusters.ts';
import { meetingsIn } from './meetings.ts';
import { sourceOf } from './source.ts';
import { trace } from './trace.ts';
import { isPlain } from './units.ts';

/**
 * Set operations on figures. Curves are clipped as polygons with chords within 2.5 µm of them (CLIP_ERROR), in
 * whole units of 0.1 µm, and what is kept of them is a curve again. So contours that meet no other come back as
 * they are, the same objects; new ends lie within 2.5 µm of both of the curves that meet. Figures may come out that touch
 * themselves in single points.
 */

/** All that is covered by at least one of the figures. */
export const unite = (shapes: readonly Shape[]): Shape =>
  inClusters(
    shapes.flatMap((shape, operand) => shape.map((contour) => ({ contour, operand }))),
    (cluster) => clip(ClipType.Union, contoursOf(cluster), []),
    () => true,
  );

/** All that is covered by both figures. */
export const intersect = (one: Shape, other: Shape): Shape =>
  inClusters(
    partsOf(one, other),
    (cluster) => clip(ClipType.Intersection, ...split(cluster)),
    () => false,
  );

/** What is left of a figure where another is taken away. */
export const subtract = (from: Shape, what: Shape): Shape =>
  inClusters(
    partsOf(from, what),
    (cluster) => clip(ClipType.Difference, ...split(cluster)),
    (operand) => operand === 0,
  );

/** How contours that cross or lie in each other tell what is covered: by SVG's fill rules. */
export type FillingRule = 'nonzero' | 'even-odd';

/** The figure that contours of any kind make: crossing themselves or each other, walked either way. */
export const resolve = (contours: readonly Contour[], rule: FillingRule): Shape =>
  clip(ClipType.Union, contours, [], rule === 'nonzero' ? FillRule.NonZero : FillRule.EvenOdd);

const partsOf = (one: Shape, other: Shape): Part[] => [
  ...one.map((contour) => ({ contour, operand: 0 })),
  ...other.map((contour) => ({ contour, operand: 1 })),
];

const contoursOf = (parts: readonly Part[]): Contour[] => parts.map(({ contour }) => contour);

const split = (cluster: readonly Part[]): [Contour[], Contour[]] => [
  contoursOf(cluster.filter(({ operand }) => operand === 0)),
  contoursOf(cluster.filter(({ operand }) => operand === 1)),
];

/** Clips groups of contours that may meet; a group of one operand alone is kept or left out as it is. */
function inClusters(
  parts: readonly Part[],
  clipped: (cluster: readonly Part[]) => Shape,
  isKept: (operand: number) => boolean,
): Shape {
  return clustersOf(parts).flatMap((cluster) => {
    const operand = cluster[0]?.operand ?? 0;
    if (cluster.some((part) => part.operand !== operand)) return clipped(cluster);
    return isKept(operand) ? contoursOf(cluster) : [];
  });
}

function clip(
  type: ClipType,
  subject: readonly Contour[],
  by: readonly Contour[],
  rule = FillRule.NonZero,
): Shape {
  const source = sourceOf([...subject, ...by]);
  const meetings = meetingsIn(source);
  const clipper = new Clipper64();
  clipper.preserveCollinear = true;
  clipper.zCallback = meetings.note;
  clipper.addPaths(source.paths.slice(0, subject.length).filter(holdsSides), PathType.Subject);
  clipper.addPaths(source.paths.slice(subject.length).filter(holdsSides), PathType.Clip);
  const solution: Paths64 = [];
  clipper.execute(type, rule, solution);
  return solution.filter(isPlain).map((path) => trace(path, source, meetings));
}

/** Rounding may leave nothing of a contour; the clipper does not take empty paths. */
const holdsSides = (path: Path64): boolean => path.length > 0;
