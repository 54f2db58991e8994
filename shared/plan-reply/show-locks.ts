import { type FoldProgram, locksOf } from '../creases/fold-program.ts';
import { showLength } from '../lengths/show-length.ts';
import type { PlanReply } from './plan-reply.ts';

/** The tongues and slots of a folder as a reply gives them; nothing where nothing is locked. */
export function showLocks(program: FoldProgram): Pick<PlanReply, 'locks'> {
  const locks = locksOf(program).map(({ panel, tongue, to, neck: [from, until], slot }) => ({
    panel,
    tongue,
    to,
    neck: showLength(Math.hypot(until.x - from.x, until.y - from.y)),
    slot: {
      left: showLength(slot.left),
      top: showLength(slot.top),
      right: showLength(slot.right),
      bottom: showLength(slot.bottom),
    },
  }));
  return locks.length === 0 ? {} : { locks };
}
