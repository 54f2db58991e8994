import type { Edge } from '../creases/crease-pattern.ts';
import type { FoldProgram, FoldStep } from '../creases/fold-program.ts';

/** Degrees by which a crease is bent at some time. */
export type AngleOf = (edge: Edge) => number;

/** The fold that made a crease. */
function foldOf({ steps }: FoldProgram, { step = -1 }: Edge): FoldStep | undefined {
  const made = steps[step];
  return made?.kind === 'fold' ? made : undefined;
}

/**
 * How far every crease is bent after some steps: not before its fold, not while it is only eased, and at a right
 * angle once a step has set it up.
 */
export function anglesAfter(program: FoldProgram, count: number): AngleOf {
  const stood = new Set(
    program.steps.slice(0, count).flatMap((step) => (step.kind === 'stand' ? step.folds : [])),
  );
  return (edge) => {
    const fold = foldOf(program, edge);
    if (!fold || (edge.step ?? count) >= count) return 0;
    if (stood.has(fold.name)) return Math.sign(edge.foldAngle) * 90;
    return fold.eased ? 0 : edge.foldAngle;
  };
}

/** How far every crease is bent in the picture of the half open piece. */
export function anglesAjar(program: FoldProgram): AngleOf {
  const closed = anglesAfter(program, program.steps.length);
  return (edge) => {
    const ajar = foldOf(program, edge)?.ajar;
    return ajar === undefined ? closed(edge) : Math.sign(edge.foldAngle) * ajar;
  };
}
