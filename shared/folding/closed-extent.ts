import { boxOf } from './flat-faces.ts';
import { heightOver, type LeafPlane, onPlane } from './leaf-planes.ts';

/** How large the finished form is, seen square to one of its leaves, in nanometres. */
export function closedExtent(
  face: LeafPlane | undefined,
  planes: readonly LeafPlane[],
): { readonly width: number; readonly height: number; readonly depth: number } | undefined {
  if (!face) return undefined;
  const corners = planes.flatMap(({ polygons }) => polygons.flat());
  const { left, right, top, bottom } = boxOf(corners.map((corner) => onPlane(face, corner)));
  const heights = boxOf(corners.map((corner) => ({ x: heightOver(face, corner), y: 0 })));
  return { width: right - left, height: bottom - top, depth: heights.right - heights.left };
}
