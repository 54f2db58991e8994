import { closedAngleOf, type Edge } from '../../../shared/creases/crease-pattern.ts';
import type { FoldProgram } from '../../../shared/creases/fold-program.ts';
import { stillFace } from '../../../shared/fold-format/still-face.ts';
import { facesAcross } from '../../../shared/folding/faces-across.ts';
import { type FlatFace, flatFaces } from '../../../shared/folding/flat-faces.ts';
import type { Folded } from '../../../shared/folding/proof-of.ts';
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
    lifts: proof.forms.map((form) => liftsOf(flatFaces(pattern, form))),
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

/** Faces that overlap by less than this, in nanometres, only touch. */
const touch = 1000;

/** Where a convex face reaches along a direction. */
function reach({ corners }: FlatFace, x: number, y: number): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const corner of corners) {
    const at = corner.x * x + corner.y * y;
    if (at < least) least = at;
    if (at > most) most = at;
  }
  return [least, most];
}

/** Whether no edge of the first face parts it from the other. */
const noneParts = (one: FlatFace, other: FlatFace): boolean =>
  one.corners.every((from, index) => {
    const to = one.corners[(index + 1) % one.corners.length] ?? from;
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const [x, y] = [(from.y - to.y) / length, (to.x - from.x) / length];
    const [[least, most], [otherLeast, otherMost]] = [reach(one, x, y), reach(other, x, y)];
    return most - otherLeast > touch && otherMost - least > touch;
  });

const overlap = (one: FlatFace, other: FlatFace): boolean => noneParts(one, other) && noneParts(other, one);

/**
 * How many layers lie under each face of a flat form, counted out of its own inside: negative for a face that is
 * turned over, since its inside is below.
 */
function liftsOf(faces: readonly FlatFace[]): readonly number[] {
  const levels = faces.map(() => 0);
  const upward = faces.toSorted((one, other) => one.height - other.height);
  for (const [place, face] of upward.entries()) {
    for (const below of upward.slice(0, place)) {
      const level = (levels[below.index] ?? 0) + 1;
      if (level > (levels[face.index] ?? 0) && overlap(face, below)) levels[face.index] = level;
    }
  }
  return faces.map(({ index, turned }) => (turned ? -1 : 1) * (levels[index] ?? 0));
}
