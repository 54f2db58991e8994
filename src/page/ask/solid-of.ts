import { closedAngleOf, type Edge } from '../../../shared/creases/crease-pattern.ts';
import type { FoldProgram } from '../../../shared/creases/fold-program.ts';
import { stillFace } from '../../../shared/fold-format/still-face.ts';
import { facesAcross } from '../../../shared/folding/faces-across.ts';
import type { FlatForm } from '../../../shared/folding/fold-in-steps.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
import { turnsOver } from '../../../shared/geometry/plane.ts';
import { inMm } from '../../../shared/lengths/show-length.ts';
import type { Hinge, Solid } from './solid.ts';

/** The folding of a proved plan in space, moment by moment. */
export function solidOf({ plan, pattern, program, proof }: Folded): Solid {
  const hinges = facesAcross(pattern).flatMap((across, face) =>
    across
      .filter(({ other }) => other > face)
      .map(
        ({ other, edge, from, to }): Hinge => ({ faces: [face, other], from, to, ...bendsOf(edge, program) }),
      ),
  );
  return {
    width: inMm(plan.blank.width),
    height: inMm(plan.blank.height),
    caliper: inMm(plan.arrangement.sheet.paper.caliper),
    vertices: pattern.vertices.map(({ x, y }) => [inMm(x), inMm(y)]),
    faces: pattern.faces.map(({ vertices }) => vertices),
    lifts: proof.forms.map(liftsIn),
    hinges,
    root: stillFace(pattern, program, proof.forms),
    steps: program.steps.length,
  };
}

/** How a crease is bent after each step. */
function bendsOf(edge: Edge, { steps }: FoldProgram): Pick<Hinge, 'angles' | 'between'> {
  const angles = [0];
  const name = edge.step === undefined ? undefined : steps[edge.step]?.name;
  let angle = 0;
  const between = steps.map((step, index) => {
    const own = index === edge.step && step.kind === 'fold';
    const eased = own && step.eased === true;
    if (own && !eased) angle = edge.foldAngle;
    if (step.kind === 'stand' && name !== undefined && step.folds.includes(name)) angle = closedAngleOf(edge);
    angles.push(angle);
    return eased ? edge.foldAngle : 0;
  });
  return { angles, between };
}

/** A face that is turned over lies below its own inside face. */
function liftsIn({ lies, order }: FlatForm): readonly number[] {
  const middle = (order.length - 1) / 2;
  const lifts: number[] = [];
  for (const [height, face] of order.entries()) {
    const motion = lies[face];
    lifts[face] = motion && turnsOver(motion) ? middle - height : height - middle;
  }
  return lifts;
}
