import { lockClearance, lockPractice, slotWidth, throughSlot } from '../creases/lock.ts';
import type { Point } from '../geometry/plane.ts';
import { type FlatFace, TOUCH } from './flat-faces.ts';
import type { Placed } from './strips.ts';

/** A lock where its parts lie in a flat form. */
export interface Parts {
  readonly faces: readonly FlatFace[];
  readonly tab: FlatFace;
  readonly tongue: readonly FlatFace[];
  readonly to: FlatFace;
  readonly neck: readonly [Point, Point];
  readonly slot: Placed;
}

/** Why a tongue does not fit its slot where both lie, if it does not. */
export const fitFault = (parts: Parts, caliper: number): string | undefined =>
  neckFault(parts, caliper) ?? shoulderFault(parts) ?? reachFault(parts, caliper);

/** Lengths along and across a slot. */
function alongSlot({ left, right, top, bottom }: Pick<Placed, 'left' | 'right' | 'top' | 'bottom'>) {
  const upright = bottom - top > right - left;
  return upright
    ? { along: 'y' as const, across: 'x' as const, from: top, to: bottom, near: left, far: right }
    : { along: 'x' as const, across: 'y' as const, from: left, to: right, near: top, far: bottom };
}

/** The neck must lie in the slot, with the clearance at its ends and paper's own thickness beside it. */
function neckFault({ neck: [p, q], slot }: Parts, caliper: number): string | undefined {
  const { along, across, from, to, near, far } = alongSlot(slot);
  const [start, end] = [Math.min(p[along], q[along]), Math.max(p[along], q[along])];
  const least = lockClearance(caliper) / 2 - TOUCH;
  if (start < from + least || end > to - least) return 'its neck has no room in the length of its slot';
  const beside = Math.min(p[across] - near, q[across] - near, far - p[across], far - q[across]);
  if (beside < caliper / 2 || far - near < slotWidth({ caliper, kerf: 0 }) - TOUCH)
    return 'its neck does not lie in its slot';
  return end - start < lockPractice.leastNeck - TOUCH ? 'its neck is too narrow to hold' : undefined;
}

function shoulderFault({ tongue, slot }: Parts): string | undefined {
  const { along, from, to } = alongSlot(slot);
  const reach = tongue.flatMap(({ corners }) => corners.map((corner) => corner[along]));
  return Math.min(...reach) > from - lockPractice.hold + TOUCH ||
    Math.max(...reach) < to + lockPractice.hold - TOUCH
    ? 'its shoulders slip back through the slot'
    : undefined;
}

/** The shoulders must come all the way through the paper, and not so far that the tab is loose. */
function reachFault({ tongue, neck: [p, q], slot }: Parts, caliper: number): string | undefined {
  const { along, across, from, to, near, far } = alongSlot(slot);
  const line = (p[across] + q[across]) / 2;
  const corners = tongue.flatMap((face) => face.corners);
  const sides = [
    corners.filter((corner) => corner[along] < from),
    corners.filter((corner) => corner[along] > to),
  ];
  for (const side of sides) {
    const outward = side.map((corner) => corner[across] - line);
    const reach = Math.min(...outward.map(Math.abs));
    const least = throughSlot(outward.every((each) => each > 0) ? far - line : line - near, caliper);
    if (reach < least - TOUCH) return 'its shoulders do not come through the slot';
    if (reach > least + lockPractice.mostPlay + TOUCH)
      return 'its neck is so long that it is loose in the slot';
  }
  return undefined;
}
