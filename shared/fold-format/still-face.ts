import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { type FlatForm, middleOf } from '../folding/fold-in-steps.ts';
import { distanceFrom, move } from '../geometry/plane.ts';

/** A face that stays where it is through every step, also when the spine is bent; the first one if none does. */
export function stillFace(
  { faces, vertices }: CreasePattern,
  { steps }: FoldProgram,
  forms: readonly FlatForm[],
): number {
  const stays = faces.findIndex(({ vertices: corners }, face) => {
    const middle = middleOf(corners, vertices);
    return steps.every((step, index) => {
      const lies = forms[index]?.lies[face];
      if (step.kind !== 'fold' || !lies) return true;
      const side = Math.sign(distanceFrom(step.line, step.moving));
      return Math.sign(distanceFrom(step.line, move(lies, middle))) !== side;
    });
  });
  return Math.max(0, stays);
}
