import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { GlueStep, GlueStrip, Step } from '../creases/fold-program.ts';
import { inverse, move } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import { type FlatFace, flatFaces, TOUCH } from './flat-faces.ts';
import type { FlatForm } from './fold-in-steps.ts';
import { type Bond, besideStrip } from './glue-bonds.ts';
import type { Joint } from './joints.ts';
import { isFoldedAt, isNearMouth, type Mouth, mouthsOf } from './mouths.ts';
import { type Plates, platesOf } from './plates.ts';
import { closedSidesOf, isLevel, type PocketPlace } from './pocket-place.ts';
import { carry, type Motion, still } from './space.ts';
import { isClear, isClearIn, type Placed, placed } from './strips.ts';

/** A folded sheet as the check of its glue needs it. */
export interface Gluable {
  readonly pattern: CreasePattern;
  readonly neighbours: Neighbours;
  /** How it lies before each step, and at last. */
  readonly forms: readonly FlatForm[];
  /** Of the last form, and the joints between them. */
  readonly faces: readonly FlatFace[];
  readonly joints: readonly Joint[];
  /** Where each face stands when the piece is set up, and which of them stay in one plane. */
  readonly motions: readonly Motion[];
  readonly leaves: readonly number[];
}

/** What is held together by the glue, and what is wrong with it. */
export interface Gluing {
  readonly bonds: readonly Bond[];
  readonly faults: readonly string[];
}

interface Layers extends Gluable {
  readonly plates: Plates;
  readonly mouths: readonly Mouth[];
  /** Of each face of the sheet. */
  readonly vertices: readonly (readonly number[])[];
}

/**
 * Where glue would not hold what it is for, or hold what it must not: each strip lies between the two layers that
 * it names when it is put on and still does in the finished form, flat and set up, keeps its distances from edges,
 * scores and mouths, and joins no pocket's back with its front but where it is to end the pocket.
 */
export function gluingOf(steps: readonly Step[], pockets: readonly PocketPlace[], sheet: Gluable): Gluing {
  const layers: Layers = {
    ...sheet,
    plates: platesOf(sheet.neighbours),
    mouths: mouthsOf(pockets, sheet.faces),
    vertices: sheet.pattern.faces.map(({ vertices }) => vertices),
  };
  const bonds: Bond[] = [];
  const faults: string[] = [];
  for (const [index, step] of steps.entries()) {
    const form = sheet.forms[index];
    if (step.kind !== 'glue' || !form) continue;
    const faces = form === sheet.forms.at(-1) ? sheet.faces : flatFaces(sheet.pattern, form);
    for (const strip of step.strips) {
      const found = bondOf(strip, step, faces, layers);
      const fault = typeof found === 'string' ? found : faultOf(found, layers);
      if (fault !== undefined) faults.push(`${step.name}, on ${strip.panel}: ${fault}`);
      if (typeof found !== 'string') bonds.push(found);
    }
  }
  return { bonds, faults };
}

/** The two layers that a strip holds together, or why it does not. */
function bondOf(
  strip: GlueStrip,
  { width }: GlueStep,
  faces: readonly FlatFace[],
  sheet: Layers,
): Bond | string {
  const clear = (face: FlatFace, there: Placed): boolean => {
    const { index } = face;
    const plate = sheet.plates[index] ?? [];
    if (plate.length === 1)
      return isClearIn(face, there, sheet.vertices[index] ?? [], sheet.neighbours[index] ?? []);
    const whole = plate.flatMap((each) => faces[each] ?? []);
    return isClear(whole, there, sheet.vertices, sheet.neighbours);
  };
  const sides = [strip.right - strip.left, strip.bottom - strip.top];
  if (!sides.every((side) => side > 0)) return 'there is no room for a strip';
  if (!sides.some((side) => Math.abs(side - width) <= TOUCH))
    return 'the strip is not as wide as is said of it';
  const owner = faces.find((face) => face.panel === strip.panel && clear(face, placed(strip, face)));
  if (!owner) return 'the strip comes too near to an edge or a score, or lies elsewhere';
  const there = placed(strip, owner);
  const plate = sheet.plates[owner.index] ?? [];
  const other = besideStrip(there, strip, owner, faces, plate);
  if (other?.panel !== strip.to) return `it sticks to ${other?.panel ?? 'nothing'} instead of ${strip.to}`;
  if (!clear(other, there)) return `it comes too near to an edge or a score of ${strip.to}`;
  const [ownerLast, otherLast] = [sheet.faces[owner.index], sheet.faces[other.index]];
  if (!ownerLast || !otherLast) return 'its panels are not there any more';
  const box = placed(strip, ownerLast);
  const beside = besideStrip(box, strip, ownerLast, sheet.faces, plate);
  if (!beside || !sheet.plates[otherLast.index]?.includes(beside.index))
    return `it does not stay on ${strip.to}`;
  return { strip, owner: ownerLast, other: otherLast, box };
}

/** The first thing that is wrong with what a strip holds. */
function faultOf(bond: Bond, { mouths, joints, motions, leaves }: Layers): string | undefined {
  const { strip, owner, other, box } = bond;
  if (leaves[owner.index] !== leaves[other.index] && apartSetUp(bond, motions) > SET_UP)
    return `it does not stay on ${strip.to} when the piece is set up`;
  for (const pocket of mouths) {
    if (shuts(pocket, strip, box)) return `it glues the ${pocket.name} shut`;
    if (isNearMouth(pocket, box) && !isFoldedAt(pocket, owner, other, joints))
      return `it comes too near to the mouth of the ${pocket.name}`;
  }
  return undefined;
}

/** How far two glued layers stand apart when the piece is set up, in nanometres. */
function apartSetUp({ owner, other, box }: Bond, motions: readonly Motion[]): number {
  const [here, there] = [owner, other].map(({ index, lies }) => {
    const [motion, back] = [motions[index] ?? still, inverse(lies)];
    return box.corners.map((corner) => carry(motion, { ...move(back, corner), z: 0 }));
  });
  return Math.max(
    ...box.corners.map((_, index) => {
      const [one, two] = [here?.[index], there?.[index]];
      return one && two ? Math.hypot(one.x - two.x, one.y - two.y, one.z - two.z) : 0;
    }),
  );
}

/** Two glued layers may stand this far apart, in nanometres, when the piece is set up: rounding. */
const SET_UP = 10;

/** A strip that ends a pocket lies no further from the panel's side than this, in nanometres; common practice. */
const endOfPocket = 15_000_000;

/** Whether a strip joins a pocket's back with its front elsewhere than where it is to end the pocket. */
function shuts(pocket: Mouth, { panel: one, to: other }: GlueStrip, box: Placed): boolean {
  const { panel, behind, front, back } = pocket;
  const isBack = (name: string) => name === panel || behind.includes(name);
  const joins = (isBack(one) && front.includes(other)) || (front.includes(one) && isBack(other));
  if (!joins) return false;
  const closed = closedSidesOf(pocket);
  // a tab lies folded away under the contents
  if (one !== panel && other !== panel) return closed.every(({ by }) => by !== 'tab');
  const runsLevel = box.right - box.left > box.bottom - box.top;
  return !closed.some(
    ({ side, by }) =>
      by !== 'fold' && runsLevel === isLevel(side) && Math.abs(box[side] - back[side]) <= endOfPocket,
  );
}
