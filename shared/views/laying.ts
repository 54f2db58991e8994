import { printUp } from '../folding/appearance.ts';
import type { Plan } from '../solver/plan.ts';

type Face = 'outside' | 'inside';

/** Said where the paper's inside is to become the folder's outside: all that follows names the folder's faces. */
export const swappedNote = (shows: Face): readonly string[] =>
  shows === 'inside'
    ? [
        'The paper’s inside becomes the outside of the folder: where the inside face is to lie up, lay the paper with its outside up.',
      ]
    : [];

/** Where the top of a one-way print must lie; nothing where the print has no direction. */
export function printNote(plan: Plan): readonly string[] {
  if (!plan.arrangement.sheet.oneWay) return [];
  return [`The top of the outside print lies ${printUp(plan).y < 0 ? 'at the top' : 'on the left'}.`];
}
