import type { CreasePattern } from '../creases/crease-pattern.ts';
import { boundsOf, overlap } from '../geometry/bounds.ts';
import { subtract } from '../geometry/clip/combine.ts';
import type { Shape } from '../geometry/contour.ts';
import { polygon } from '../geometry/walk.ts';

/** What openings leave of each face that they cut, on the open blank, by face index; empty where nothing is left. */
export function facesLeft({ faces, vertices }: CreasePattern, openings: Shape): ReadonlyMap<number, Shape> {
  const left = new Map<number, Shape>();
  for (const [index, face] of faces.entries()) {
    const whole = [polygon(face.vertices.flatMap((corner) => vertices[corner] ?? []))];
    const bounds = boundsOf(whole);
    const near = openings.filter((contour) => overlap(boundsOf([contour]), bounds));
    if (near.length === 0) continue;
    // a counter whose opening lies elsewhere takes nothing
    const rest = subtract(whole, openings);
    if (rest.length !== 1 || rest[0] !== whole[0]) left.set(index, rest);
  }
  return left;
}
