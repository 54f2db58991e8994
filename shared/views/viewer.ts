import type { Point3 } from '../folding/space.ts';

/** Degrees by which a standing book is turned to the right, so that its front cover is seen from outside. */
const turned = 62;
/** Degrees from which one looks down. */
const above = 24;

const inRadians = (degrees: number): number => (degrees * Math.PI) / 180;
const [sinTurned, cosTurned] = [Math.sin(inRadians(turned)), Math.cos(inRadians(turned))];
const [sinAbove, cosAbove] = [Math.sin(inRadians(above)), Math.cos(inRadians(above))];

/** Turns a standing book about its upright, then tips it toward the viewer; x runs right, y down, z to the viewer. */
export function toViewer({ x, y, z }: Point3): Point3 {
  const [across, near] = [x * cosTurned + z * sinTurned, z * cosTurned - x * sinTurned];
  return { x: across, y: y * cosAbove + near * sinAbove, z: near * cosAbove - y * sinAbove };
}
