import { spineFor } from '../contents/stack.ts';
import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram } from '../creases/fold-program.ts';
import { move } from '../geometry/plane.ts';
import { crossings } from './crossings.ts';
import { facesAcross } from './faces-across.ts';
import { boxOf, type FlatFace, flatFaces } from './flat-faces.ts';
import { type FlatForm, foldInSteps } from './fold-in-steps.ts';
import { foldRigid } from './fold-rigid.ts';
import { glueFaults } from './glue-faults.ts';
import { graphFaults } from './graph-faults.ts';
import { jointsOf } from './joints.ts';
import { type Pocket, type PocketPlace, pocketIn } from './pockets.ts';
import { type Spot, spotsOf } from './spots.ts';
import { stepFaults } from './step-faults.ts';
import { type ClosedLayers, closedLayers } from './thickness.ts';
import { vertexFaults } from './vertices.ts';

/** What a plan promises of its folded form, in nanometres. */
export interface Promised {
  /** Of the flat sleeve, before the spine is bent. */
  readonly flat: { readonly width: number; readonly height: number };
  readonly pockets: readonly PocketPlace[];
  /** Distance between the spine scores, what lies in the folder when it is closed, and one sheet's thickness. */
  readonly spine: number;
  readonly stack: number;
  readonly caliper: number;
}

/** One thing that the folded form was held against. */
export interface Check {
  readonly name: string;
  readonly holds: boolean;
  readonly message: string;
}

/** The folded form of a crease pattern and what was proved of it. */
export interface Proof {
  readonly checks: readonly Check[];
  readonly holds: boolean;
  /** Nanometres by which two ways of folding the same pattern disagree. */
  readonly residual: number;
  readonly forms: readonly FlatForm[];
  readonly faces: readonly FlatFace[];
  readonly pockets: readonly Pocket[];
  readonly spots: readonly Spot[];
  readonly layers: ClosedLayers;
}

/** Two ways of folding may differ by this much, in nanometres: rounding over a few dozen motions. */
const CLOSURE = 1;

/** A folded size may differ from the promised one by this much, in nanometres. */
const SIZE_SLIP = 2;

/**
 * Folds a pattern twice, once by its steps and once from its letters alone, and holds the result against
 * what was promised. A failing check means that the pattern must not be drawn.
 */
export function prove(pattern: CreasePattern, program: FoldProgram, promised: Promised): Proof {
  const forms = foldInSteps(pattern, program);
  const last = forms.at(-1);
  if (!last) throw new Error('a program without steps has no folded form');
  const faces = flatFaces(pattern, last);
  const neighbours = facesAcross(pattern);
  const joints = jointsOf(pattern, neighbours, faces);
  const root = Math.max(0, last.lies.findIndex(isStill));
  const rigid = foldRigid(pattern, neighbours, root, ({ foldAngle }) =>
    Math.abs(foldAngle) === 180 ? foldAngle : 0,
  );
  const closed = foldRigid(pattern, neighbours, root);
  const residual = Math.max(rigid.residual, closed.residual, disagreement(pattern, last, rigid.vertices));
  const box = boxOf(faces.flatMap(({ corners }) => corners));
  const spots = spotsOf(faces);
  const layers = closedLayers(pattern, spots);
  const pockets = promised.pockets.map((place) => pocketIn(place, joints, faces));
  const checks = [
    check(
      'graph',
      [...graphFaults(pattern, program.outline), ...rigid.faults],
      'the sheet has the blank’s outline, and its faces hang together',
    ),
    check(
      'steps',
      stepFaults(pattern, program, neighbours, forms),
      'every crease is bent as its step bends it',
    ),
    check(
      'closure',
      residual <= CLOSURE ? [] : [`two ways round the sheet miss each other by ${residual / 1e6} mm`],
      'every way round the sheet leads to the same place',
    ),
    check(
      'vertices',
      vertexFaults(pattern).map(({ message }) => message),
      'Kawasaki and Maekawa hold at every vertex',
    ),
    check(
      'layers',
      crossings(joints, faces).map(({ message }) => message),
      'no layer passes through another',
    ),
    check('size', sizeFaults(box, promised), 'the folded outline has the promised size'),
    check(
      'pockets',
      pockets.flatMap(({ faults }) => faults),
      'every pocket is closed above and below and open at its mouth',
    ),
    check(
      'glue',
      glueFaults(program.steps, promised.pockets, { pattern, neighbours, forms, faces, joints }),
      'every strip of glue holds the two layers that it is for, clear of edges, scores and mouths, and shuts no pocket',
    ),
    check('spine', spineFaults(layers, promised), 'the closed folder fits its spine'),
  ];
  return {
    checks,
    holds: checks.every(({ holds }) => holds),
    residual,
    forms,
    faces,
    pockets,
    spots,
    layers,
  };
}

/** Each 90° fold hinges at mid-sheet, so of n layers beside the spine n − 1 count. */
function spineFaults({ atSpine }: ClosedLayers, { spine, stack, caliper }: Promised): string[] {
  const needed = spineFor(stack, { layers: atSpine, caliper, ease: 0 });
  return needed <= spine
    ? []
    : [`${atSpine} layers and the contents take ${needed / 1e6} mm beside a spine of ${spine / 1e6} mm`];
}

const isStill = ({ a, b, c, d, tx, ty }: FlatForm['lies'][number]): boolean =>
  a === 1 && b === 0 && c === 0 && d === 1 && tx === 0 && ty === 0;

const check = (name: string, faults: readonly string[], fine: string): Check => ({
  name,
  holds: faults.length === 0,
  message: faults.length === 0 ? fine : [...new Set(faults)].slice(0, 3).join('; '),
});

function disagreement(
  { faces, vertices }: CreasePattern,
  { lies }: FlatForm,
  folded: readonly { x: number; y: number; z: number }[],
): number {
  let most = 0;
  for (const [index, face] of faces.entries()) {
    for (const corner of face.vertices) {
      const [point, motion, there] = [vertices[corner], lies[index], folded[corner]];
      if (!point || !motion || !there) continue;
      const here = move(motion, point);
      most = Math.max(most, Math.hypot(here.x - there.x, here.y - there.y, there.z));
    }
  }
  return most;
}

function sizeFaults(box: ReturnType<typeof boxOf>, { flat }: Promised): string[] {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const off = Math.max(Math.abs(width - flat.width), Math.abs(height - flat.height));
  return off <= SIZE_SLIP
    ? []
    : [
        `the folded outline is ${width / 1e6} by ${height / 1e6} mm instead of ${flat.width / 1e6} by ${flat.height / 1e6} mm`,
      ];
}
