import type { Edge } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';

/** Degrees by which a crease is bent at some time. */
export type AngleOf = (edge: Edge) => number;

/** Degrees, without a sign, by which every fold of a program is bent after some steps; by the fold's index. */
function bentAfter({ steps }: FoldProgram, count: number): readonly number[] {
  const stood = new Set<string>();
  for (const step of steps.slice(0, count))
    if (step.kind === 'stand') for (const name of step.folds) stood.add(name);
  return steps.map((step, index) => {
    if (step.kind !== 'fold' || index >= count) return 0;
    return stood.has(step.name) ? 90 : step.eased ? 0 : step.angle;
  });
}

const signed =
  (bent: readonly number[]): AngleOf =>
  ({ foldAngle, step = -1 }) => {
    const degrees = bent[step] ?? 0;
    return foldAngle < 0 && degrees !== 0 ? -degrees : degrees;
  };

/**
 * How far every crease is bent after some steps: not before its fold, not while it is only eased, and at a right
 * angle once a step has set it up.
 */
export const anglesAfter = (program: FoldProgram, count: number): AngleOf =>
  signed(bentAfter(program, count));

/** How far every crease is bent in the picture of the half open piece. */
export function anglesAjar(program: FoldProgram): AngleOf {
  const closed = bentAfter(program, program.steps.length);
  return signed(
    program.steps.map((step, index) => (step.kind === 'fold' ? step.ajar : undefined) ?? closed[index] ?? 0),
  );
}
