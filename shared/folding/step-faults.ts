import { type CreasePattern, closedAngleOf, type Edge } from '../creases/crease-pattern.ts';
import type { FoldProgram, Step } from '../creases/fold-program.ts';
import { distanceFrom, type Isometry, move, turnsOver } from '../geometry/plane.ts';
import { anglesAfter } from './angles.ts';
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
  pattern: CreasePattern,
  program: FoldProgram,
  neighbours: Neighbours,
  forms: readonly FlatForm[],
): readonly string[] {
  const { steps } = program;
  const closedBySteps = anglesAfter(program, steps.length);
  const made = new Set(pattern.edges.map(({ step }) => step));
  const faults: string[] = [];
  for (const [index, step] of steps.entries())
    if (step.kind === 'fold' && !made.has(index)) faults.push(`“${step.name}” folds nothing`);
  for (const [face, across] of neighbours.entries()) {
    for (const { edge } of across) {
      const index = edge.step ?? -1;
      const what = faultOf(edge, pattern, steps[index], forms[index]?.lies[face]);
      if (what !== undefined) faults.push(`a crease of ${pattern.faces[face]?.panel} ${what}`);
      else if (closedAngleOf(edge) !== closedBySteps(edge))
        faults.push(`a crease of ${pattern.faces[face]?.panel} is not as its steps leave it`);
    }
  }
  return faults;
}

function faultOf(
  { ends, foldAngle, letter }: Edge,
  { vertices }: CreasePattern,
  step: Step | undefined,
  lies: Isometry | undefined,
): string | undefined {
  if (letter === 'F') return foldAngle === 0 ? undefined : 'is flat and bent at once';
  if (step?.kind !== 'fold' || !lies) return 'is made by no fold';
  for (const end of ends) {
    const point = vertices[end];
    if (!point || !(Math.abs(distanceFrom(step.line, move(lies, point))) <= OFF_LINE))
      return `does not lie where “${step.name}” folds`;
  }
  const toward = (step.direction === 'toward') !== turnsOver(lies);
  if (foldAngle === (toward ? step.angle : -step.angle) && letter === (toward ? 'V' : 'M')) return undefined;
  return `is not bent as “${step.name}” bends it`;
}
