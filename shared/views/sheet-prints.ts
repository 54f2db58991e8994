import { printUp } from '../folding/appearance.ts';
import type { Plan } from '../solver/plan.ts';
import type { Ups } from './painted.ts';

/** Where the two prints' ups point on the sheet; prints whose turn to each other is not known run the same way. */
export function printUps(plan: Plan): Ups {
  const up = printUp(plan);
  const headToFoot = plan.arrangement.sheet.printPair === 'head-to-foot';
  return { outside: up, inside: headToFoot ? { x: -up.x, y: -up.y } : up };
}
