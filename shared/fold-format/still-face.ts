import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { type FlatForm, isMoved, middleOf } from '../folding/fold-in-steps.ts';

/** A face that stays where it is through every step, also when the spine is bent; the first one if none does. */
export function stillFace(
  { faces, vertices }: CreasePattern,
  { steps }: FoldProgram,
  forms: readonly FlatForm[],
): number {
  const stays = faces.findIndex(({ vertices: corners, panel }, face) => {
    const middle = middleOf(corners, vertices);
    return steps.every((step, index) => {
      const lies = forms[index]?.lies[face];
      if (step.kind !== 'fold' || !lies) return true;
      return !isMoved(step, panel, lies, middle);
    });
  });
  return Math.max(0, stays);
}
