import type { CreasePattern, Edge } from '../creases/crease-pattern.ts';
import { move, type Point } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import type { FlatFace } from './flat-faces.ts';

/** A crease where it lies in a flat form, with the two faces that it joins. */
export interface Joint {
  readonly edge: Edge;
  readonly from: Point;
  readonly to: Point;
  readonly one: FlatFace;
  readonly other: FlatFace;
  /** Folded flat, so that both faces lie on one side of it; otherwise the sheet runs straight on. */
  readonly folded: boolean;
}

/** Every crease of a pattern once, where it lies. */
export function jointsOf(
  pattern: CreasePattern,
  neighbours: Neighbours,
  faces: readonly FlatFace[],
): readonly Joint[] {
  return neighbours.flatMap((across, index) =>
    across.flatMap(({ other: otherIndex, edge, from, to }) => {
      const [one, other] = [faces[index], faces[otherIndex]];
      const [p, q] = [pattern.vertices[from], pattern.vertices[to]];
      if (otherIndex < index || !one || !other || !p || !q) return [];
      const folded = Math.abs(edge.foldAngle) === 180;
      return [{ edge, from: move(one.lies, p), to: move(one.lies, q), one, other, folded }];
    }),
  );
}
