import { boundsOf, centreOf } from '../../geometry/bounds.ts';
import type { Shape } from '../../geometry/contour.ts';
import { moveShape, shift } from '../../geometry/move-shape.ts';

/** A figure moved so that the middle of its bounds lies on (0, 0). */
export function centred(shape: Shape): Shape {
  const { x, y } = centreOf(boundsOf(shape));
  return moveShape(shape, shift(-x, -y));
}
