import { clockwise, type FlatFace, TOUCH } from '../folding/flat-faces.ts';
import type { FoldFrame } from './fold-document.ts';

/**
 * Which of two faces lies above, for every two that overlap.
 *
 * FOLD 1.2, faceOrders: [f, g, 1] says that f lies on the side to which g's normal points in the folded form,
 * [f, g, -1] on the other. Normals point out of the inside face, so a face that lies as on the open sheet has
 * its normal toward the viewer and what is nearer to the viewer is +1; for a turned face it is -1. A triple is
 * given once, with f < g, since [g, f, …] follows from it. Bending a whole stack at once turns the normals
 * with the layers, so the same triples hold in space.
 */
export function faceOrders(faces: readonly FlatFace[]): FoldFrame['faceOrders'] {
  return faces.flatMap((f, index) =>
    faces.slice(index + 1).flatMap((g): FoldFrame['faceOrders'] => {
      if (!overlap(f, g)) return [];
      return [[f.index, g.index, f.height > g.height === g.turned ? -1 : 1]];
    }),
  );
}

/** Whether two convex faces share more than their edges: then no edge of either has the other beyond it. */
export function overlap(one: FlatFace, other: FlatFace): boolean {
  if (one.left >= other.right - TOUCH || other.left >= one.right - TOUCH) return false;
  if (one.top >= other.bottom - TOUCH || other.top >= one.bottom - TOUCH) return false;
  return !apartAlong(one, other) && !apartAlong(other, one);
}

/** Whether a face lies wholly beyond one edge of another, which lies to the right of its own edges. */
function apartAlong(face: FlatFace, other: FlatFace): boolean {
  const corners = clockwise(face);
  return corners.some((a, index) => {
    const b = corners[(index + 1) % corners.length] ?? a;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length = Math.hypot(dx, dy);
    return other.corners.every(({ x, y }) => dx * (y - a.y) - dy * (x - a.x) <= TOUCH * length);
  });
}
