import { styleOf } from '../styles/registry.ts';
import type { Folded } from './proof-of.ts';
import type { Side } from './regions.ts';
import { carry, carryDirection, cross, minus, type Point3, still, times } from './space.ts';

/**
 * How somebody sees the finished piece who looks square at its face from one side: x right, y down, z toward the
 * viewer, in nanometres.
 */
export function squareView({ plan, pattern, proof }: Folded, side: Side): (point: Point3) => Point3 {
  const { face } = styleOf(plan.spec);
  const motion = proof.motions[pattern.faces.findIndex(({ panel }) => panel === face)] ?? still;
  const origin = carry(motion, { x: 0, y: 0, z: 0 });
  const across = carryDirection(motion, { x: 1, y: 0, z: 0 });
  const down = carryDirection(motion, { x: 0, y: 1, z: 0 });
  const inward = cross(across, down);
  const sign = side === 'inside' ? 1 : -1;
  return (point) => {
    const from = minus(point, origin);
    const seen = [sign * times(across, from), times(down, from), sign * times(inward, from)];
    // whole nanometres, so that what the motions round off never shows
    const [x = 0, y = 0, z = 0] = seen.map((value) => Math.round(value) + 0);
    return { x, y, z };
  };
}
