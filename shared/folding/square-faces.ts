import { type Isometry, turnsOver } from '../geometry/plane.ts';
import { boxOf, type FlatFace } from './flat-faces.ts';
import { isNearer } from './glue-bonds.ts';
import type { Folded } from './proof-of.ts';
import type { Side } from './regions.ts';
import { carry, type Motion, type Point3, still } from './space.ts';
import { squareView } from './square-view.ts';

/** A face is seen squarely if the third axis of its paper leans no further than this from the viewer's. */
const SQUARE = 1e-6;
/** Depths that differ by less than this, in nanometres, are one. */
const SAME = 2000;

/**
 * The faces of the finished piece that somebody sees squarely who looks at its face from one side, as a flat form: the
 * highest is nearest to the viewer. What stands edge-on is left out.
 */
export function facesSquareTo(folded: Folded, side: Side): readonly FlatFace[] {
  const { pattern, proof } = folded;
  const view = squareView(folded, side);
  const square = proof.faces.flatMap((face) => {
    const motion = proof.motions[face.index] ?? still;
    const lies = asSeen(motion, view);
    if (!lies) return [];
    const corners = (pattern.faces[face.index]?.vertices ?? []).flatMap((vertex) => {
      const point = pattern.vertices[vertex];
      return point ? [view(carry(motion, { ...point, z: 0 }))] : [];
    });
    const points = corners.map(({ x, y }) => ({ x, y }));
    const seen = {
      ...face,
      lies,
      turned: turnsOver(lies),
      corners: points,
      ...boxOf(points),
    };
    // a leaf that is seen from the other side has its layers the other way round
    const upright = turnsOver(lies) === face.turned;
    return [{ seen, depth: corners[0]?.z ?? 0, layer: upright ? face.height : -face.height }];
  });
  const isTurned = new Map(square.map(({ seen }) => [seen.index, seen.turned]));
  return square
    .toSorted((one, other) => {
      if (Math.abs(one.depth - other.depth) >= SAME) return one.depth - other.depth;
      const glued = isNearer(proof.bonds, one.seen.index, other.seen.index, (face) => !isTurned.get(face));
      return glued === undefined ? one.layer - other.layer : glued ? 1 : -1;
    })
    .map(({ seen }, height) => ({ ...seen, height }));
}

/** A motion as the viewer sees it, where that is a motion of the plane. */
function asSeen(motion: Motion, view: (point: Point3) => Point3): Isometry | undefined {
  const far = 1e9;
  const [start, across, down] = [
    { x: 0, y: 0, z: 0 },
    { x: far, y: 0, z: 0 },
    { x: 0, y: far, z: 0 },
  ].map((point) => view(carry(motion, point)));
  if (!start || !across || !down) return undefined;
  if (Math.abs(across.z - start.z) > SQUARE * far || Math.abs(down.z - start.z) > SQUARE * far)
    return undefined;
  return {
    a: (across.x - start.x) / far,
    b: (across.y - start.y) / far,
    c: (down.x - start.x) / far,
    d: (down.y - start.y) / far,
    tx: start.x,
    ty: start.y,
  };
}
