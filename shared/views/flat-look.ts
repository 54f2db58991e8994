import type { CreasePattern } from '../creases/crease-pattern.ts';
import { boxOf } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import type { Side } from '../folding/regions.ts';
import { type Isometry, move, type Point } from '../geometry/plane.ts';
import { lieLevel } from './lie-level.ts';
import type { Look } from './painted.ts';
import type { PagePoint } from './picture.ts';

/** A flat look with its own page: the form's box begins at its top left corner. */
export interface FlatLook extends Look {
  readonly side: Side;
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  /** The page's point for a point of the flat form, in nanometres. */
  readonly onPage: (point: Point) => PagePoint;
}

/**
 * A flat form seen squarely. From outside it is mirrored left to right, as when a page is turned, and the lowest
 * layer is the nearest.
 * @param also points that are to be seen besides, such as corners of what sticks out
 */
export function flatLook(
  { vertices, faces }: CreasePattern,
  { lies, order }: FlatForm,
  side: Side,
  ratio: number,
  also: readonly Point[] = [],
): FlatLook {
  const motion = (face: number): Isometry => {
    const found = lies[face];
    if (!found) throw new Error(`face ${face} has no place in the form`);
    return found;
  };
  const corners = order.flatMap((face) =>
    (faces[face]?.vertices ?? []).flatMap((corner) => {
      const point = vertices[corner];
      return point ? [move(motion(face), point)] : [];
    }),
  );
  const box = boxOf([...corners, ...also]);
  const scale = ratio / 1e6;
  const onPage = ({ x, y }: Point): PagePoint => ({
    x: (side === 'inside' ? x - box.left : box.right - x) * scale,
    y: (y - box.top) * scale,
  });
  return {
    side,
    ratio,
    width: (box.right - box.left) * scale,
    height: (box.bottom - box.top) * scale,
    onPage,
    order: side === 'inside' ? order : order.toReversed(),
    sideOf: () => side,
    at: (face, point) => onPage(move(motion(face), point)),
    level: (one, other) => lieLevel(motion(one), motion(other)),
  };
}
