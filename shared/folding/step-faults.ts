import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { distanceFrom, move, turnsOver } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import type { FlatForm } from './fold-in-steps.ts';

/** A crease may lie this many nanometres off the line of its fold: its ends are rounded to whole nanometres. */
const OFF_LINE = 1;

/**
 * Where a pattern and the steps that are said to make it disagree: a crease must lie on the line of its own step
 * and bend by its angle and its way, and each fold must make a crease. Of folds of 90° nothing else tells which
 * way they go.
 * @param neighbours from `facesAcross`
 * @param forms from `foldInSteps`
 */
export function stepFaults(
  { vertices, edges, faces }: CreasePattern,
  { steps }: FoldProgram,
  neighbours: Neighbours,
  forms: readonly FlatForm[],
): readonly string[] {
  const made = new Set(edges.map(({ step }) => step));
  const idle = steps.filter((step, index) => step.kind === 'fold' && !made.has(index));
  const wrong = neighbours.flatMap((across, face) =>
    across.flatMap(({ edge: { ends, foldAngle, letter, step: index = -1 } }) => {
      const [step, lies] = [steps[index], forms[index]?.lies[face]];
      if (step?.kind !== 'fold' || !lies) return [`a crease of ${faces[face]?.panel} is made by no fold`];
      const off = ends.map((end) =>
        distanceFrom(step.line, move(lies, vertices[end] ?? { x: Number.NaN, y: Number.NaN })),
      );
      if (!off.every((distance) => Math.abs(distance) <= OFF_LINE))
        return [`a crease of ${faces[face]?.panel} does not lie where “${step.name}” folds`];
      const toward = (step.direction === 'toward') !== turnsOver(lies);
      if (foldAngle === (toward ? step.angle : -step.angle) && letter === (toward ? 'V' : 'M')) return [];
      return [`a crease of ${faces[face]?.panel} is not bent as “${step.name}” bends it`];
    }),
  );
  return [...idle.map(({ name }) => `“${name}” folds nothing`), ...wrong];
}
