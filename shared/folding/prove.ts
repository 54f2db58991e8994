import { type CreasePattern, closedAngleOf } from '../creases/crease-pattern.ts';
import { type FoldProgram, locksOf } from '../creases/fold-program.ts';
import { move } from '../geometry/plane.ts';
import { closedExtent } from './closed-extent.ts';
import { crossings } from './crossings.ts';
import { facesAcross } from './faces-across.ts';
import { boxOf, type FlatFace, flatFaces } from './flat-faces.ts';
import { type FlatForm, foldInSteps } from './fold-in-steps.ts';
import { foldRigid } from './fold-rigid.ts';
import type { Bond } from './glue-bonds.ts';
import { gluingOf } from './glue-faults.ts';
import { graphFaults } from './graph-faults.ts';
import { jointsOf } from './joints.ts';
import { leafPlanes } from './leaf-planes.ts';
import { leavesOf } from './leaves.ts';
import { lockingOf } from './lock-faults.ts';
import { passingThrough } from './passing-through.ts';
import { closedSidesOf, type PocketPlace } from './pocket-place.ts';
import { type Pocket, pocketIn } from './pockets.ts';
import { roomFaults } from './room-between.ts';
import type { Motion } from './space.ts';
import { type Spot, spotsOf } from './spots.ts';
import { boxIn } from './standing-box.ts';
import { stepFaults } from './step-faults.ts';
import { type ClosedLayers, closedLayers, layersOfLeaves } from './thickness.ts';
import { vertexFaults } from './vertices.ts';

/** What a plan promises of its folded form, in nanometres. */
export interface Promised {
  /** Of the flat form, before any fold is set up at a right angle. */
  readonly flat: { readonly width: number; readonly height: number };
  /** Of the finished form, seen square to a panel; left out where it lies flat for good. */
  readonly closed?: {
    readonly face: string;
    readonly width: number;
    readonly height: number;
    /** Between the outermost sheets. */
    readonly depth: number;
  };
  readonly pockets: readonly PocketPlace[];
  /** What lies in the piece when it is closed, and one sheet's thickness. */
  readonly stack: number;
  readonly caliper: number;
  /** One item as it stands, where there are contents. */
  readonly item?: { readonly width: number; readonly height: number };
  /** Layers of the sheet around the contents, as the style counts them. */
  readonly layers?: number;
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
  /** Where each face stands in the finished form. */
  readonly motions: readonly Motion[];
  /** For each face, the number of its leaf. */
  readonly leaves: readonly number[];
  /** Layers that glue or a lock holds together. */
  readonly bonds: readonly Bond[];
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
  const closed = foldRigid(pattern, neighbours, root, closedAngleOf);
  const residual = Math.max(rigid.residual, closed.residual, disagreement(pattern, last, rigid.vertices));
  const box = boxOf(faces.flatMap(({ corners }) => corners));
  const spots = spotsOf(faces);
  const { motions } = closed;
  const locks = locksOf(program);
  const leaves = leavesOf(pattern, neighbours, closedAngleOf, locks);
  const planes = leafPlanes(pattern, motions, closed.vertices, leaves);
  const leafLayers = layersOfLeaves(leaves, spots, joints);
  const { stack, caliper } = promised;
  const sheet = { pattern, neighbours, forms, faces, joints, motions, leaves };
  const gluing = gluingOf(program.steps, promised.pockets, sheet);
  const locking = lockingOf(program.steps, sheet, caliper);
  const bonds = [...gluing.bonds, ...locking.bonds];
  const pockets = promised.pockets.map((place) =>
    place.walls
      ? boxIn(place, { pattern, faces, planes, motions, stack, item: promised.item })
      : pocketIn(place, joints, faces, bonds),
  );
  const main = promised.closed?.face ?? promised.pockets[0]?.panel;
  const face = planes.find((plane) => plane.faces.some((each) => pattern.faces[each]?.panel === main));
  const layers = closedLayers(face, planes, leafLayers);
  const behind = promised.pockets.map(({ panel }) => panel);
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
      [...crossings(joints, faces, locks).map(({ message }) => message), ...passingThrough(pattern, planes)],
      'no layer passes through another',
    ),
    check(
      'size',
      [...sizeFaults(box, promised), ...closedFaults(face && closedExtent(face, closed.vertices), promised)],
      'the folded outline has the promised size',
    ),
    ...(pockets.length === 0
      ? []
      : [
          check(
            'pockets',
            pockets.flatMap(({ faults }) => faults),
            messageOn(promised.pockets),
          ),
        ]),
    check(
      'glue',
      gluing.faults,
      'every strip of glue holds the two layers that it is for, clear of edges, scores and mouths, and shuts no pocket',
    ),
    ...(locks.length === 0
      ? []
      : [
          check(
            'locks',
            locking.faults,
            'every tongue meets its slot and has room in it, goes through that one layer, and is held by its shoulders',
          ),
        ]),
    ...(planes.length < 2
      ? []
      : [
          check(
            'spine',
            roomFaults({
              pattern,
              motions,
              leaves,
              planes,
              layers: leafLayers,
              bonds,
              behind,
              stack,
              caliper,
              layersAround: promised.layers ?? 0,
            }),
            promised.pockets.every(({ walls }) => walls === undefined)
              ? 'the closed folder fits its spine'
              : 'panels that stand face to face leave room for the paper and the contents between them',
          ),
        ]),
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
    motions,
    leaves,
    bonds,
  };
}

/** What holds of sound pockets, as their sides say. */
function messageOn(pockets: readonly PocketPlace[]): string {
  if (pockets.some(({ walls }) => walls))
    return 'nothing reaches into the space for the contents, and paper stands around it where it is to';
  const usual = pockets.every((place) => closedSidesOf(place).every(({ by }) => by === 'fold'));
  return usual
    ? 'every pocket is closed above and below and open at its mouth'
    : 'every pocket is closed at its sides by folds, tabs or glue, and open at its mouth';
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

function closedFaults(
  extent: ReturnType<typeof closedExtent> | undefined,
  { closed }: Pick<Promised, 'closed'>,
): string[] {
  if (!closed) return [];
  if (!extent) return [`nothing is called ${closed.face}`];
  const sides = ['width', 'height', 'depth'] as const;
  const shown = (size: Readonly<Record<(typeof sides)[number], number>>) =>
    sides.map((side) => size[side] / 1e6).join(' by ');
  return sides.every((side) => Math.abs(extent[side] - closed[side]) <= SIZE_SLIP)
    ? []
    : [`the finished form is ${shown(extent)} mm instead of ${shown(closed)} mm`];
}
