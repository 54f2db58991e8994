import type { Point3 } from '../folding/space.ts';
import type { Pose } from '../styles/style.ts';

/** A piece that stands like a book, turned to the right so that its front is seen from outside, and looked down on. */
export const usualPose: Pose = Object.freeze({ turned: 62, tipped: 24 });

const inRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Spins a piece in its plane, turns it about its upright, then tips it; x runs right, y down, z to the viewer. */
export function viewerOf({ spun = 0, turned, tipped }: Pose): (point: Point3) => Point3 {
  const [sinSpun, cosSpun] = [Math.sin(inRadians(spun)), Math.cos(inRadians(spun))];
  const [sinTurned, cosTurned] = [Math.sin(inRadians(turned)), Math.cos(inRadians(turned))];
  const [sinTipped, cosTipped] = [Math.sin(inRadians(tipped)), Math.cos(inRadians(tipped))];
  return (point) => {
    const x = spun === 0 ? point.x : point.x * cosSpun - point.y * sinSpun;
    const y = spun === 0 ? point.y : point.x * sinSpun + point.y * cosSpun;
    const [across, near] = [x * cosTurned + point.z * sinTurned, point.z * cosTurned - x * sinTurned];
    return { x: across, y: y * cosTipped + near * sinTipped, z: near * cosTipped - y * sinTipped };
  };
}
