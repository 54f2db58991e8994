import type { Step } from '../creases/fold-program.ts';
import { anglesAfter } from '../folding/angles.ts';
import { type FlatFace, flatFaces } from '../folding/flat-faces.ts';
import type { FlatForm } from '../folding/fold-in-steps.ts';
import type { Folded } from '../folding/proof-of.ts';
import { contentsIn } from './contents-outline.ts';
import { signedArea } from './convex.ts';
import { fillMarks } from './fill-marks.ts';
import { type Room, ratioFor } from './fit.ts';
import { type FlatLook, flatLook } from './flat-look.ts';
import { group, heightOf } from './flat-scene.ts';
import { foldMarks } from './fold-line.ts';
import { glueMarks } from './glue-marks.ts';
import { posedMarks } from './half-open-scene.ts';
import { marksOfFaces } from './joined-faces.ts';
import { printNote } from './laying.ts';
import { moveMarks } from './move-marks.ts';
import { paint } from './painted.ts';
import { namesIn } from './part-names.ts';
import type { Mark, Scene } from './picture.ts';
import { regionBadges } from './region-badges.ts';
import { seamOf } from './seam.ts';
import { printUps } from './sheet-prints.ts';
import { slipMarks } from './slip-marks.ts';
import { slotMarks } from './slot-marks.ts';
import { posedLook } from './solid-look.ts';
import { stepSentence } from './step-words.ts';
import { regionsOf, type Seen, seenOf } from './visible.ts';

/** Fold lines and arrows reach this far beyond the paper, in millimetres. */
const around = 7;

/** One scene for each step, all to the scale of the open sheet: the paper before the step, and what to do. */
export function stepScenes(folded: Folded, room: Room): readonly Scene[] {
  const { blank } = folded.plan;
  const space = { width: room.width - 2 * around, height: room.height - 2 * around };
  const contents = heightOf(contentsIn(folded).flatMap(({ corners }) => corners));
  const ratio = ratioFor(blank.width, Math.max(blank.height, contents), space);
  const { steps } = folded.program;
  const setUp = setUpOf(folded);
  return steps.flatMap((step, index) => {
    if (setUp >= 0 && index >= setUp) return [solidStep(folded, step, index + 1, space)];
    const form = folded.proof.forms[index];
    return form ? [stepScene(folded, step, index + 1, form, ratio)] : [];
  });
}

/** The index of the step that sets the piece up; −1 where none does. */
const setUpOf = ({ program }: Folded): number => program.steps.findIndex(({ kind }) => kind === 'stand');

/** What to do in each step: the headings of {@link stepScenes}, without their drawings. */
export function stepHeadings(folded: Folded): readonly string[] {
  const setUp = setUpOf(folded);
  return folded.program.steps.flatMap((step, index) => {
    if (setUp >= 0 && index >= setUp) return [stepSentence(step, folded.plan, namesIn(folded))];
    return folded.proof.forms[index] ? [flatHeading(folded, step, index + 1)] : [];
  });
}

function flatHeading(folded: Folded, step: Step, number: number): string {
  const { plan } = folded;
  const task = stepSentence(step, plan, namesIn(folded));
  if (number > 1) return task;
  return ['Lay the sheet with its inside face up.', ...printNote(plan), task].join(' ');
}

/** Once the piece is set up: how it stands when the step is done. */
function solidStep(folded: Folded, step: Step, number: number, room: Room): Scene {
  const filled = step.kind === 'fill';
  const look = posedLook(folded, anglesAfter(folded.program, number), room, filled);
  const words = stepSentence(step, folded.plan, namesIn(folded));
  const { marks } = posedMarks(folded, look, filled);
  return {
    name: `step-${number}`,
    heading: words,
    number,
    description: `Step ${number}: ${words}`,
    width: look.width + 2 * around,
    height: look.height + 2 * around,
    marks: moveMarks(marks, around, around),
  };
}

function stepScene(folded: Folded, step: Step, number: number, form: FlatForm, ratio: number): Scene {
  const { pattern, plan, proof, knockouts } = folded;
  const shown = step.kind === 'fill' ? contentsIn(folded).flatMap(({ corners }) => corners) : [];
  const look = flatLook(pattern, form, 'inside', ratio, shown);
  const faces = flatFaces(pattern, form);
  // the fronts meet once everything lies where it will stay
  const closed = form.lies.every((lies, face) => lies === proof.forms.at(-1)?.lies[face]);
  const seen = seenOf(
    paint(pattern, form, look, printUps(plan), closed ? seamOf(folded) : undefined, knockouts),
  );
  const first = number === 1;
  const words = flatHeading(folded, step, number);
  const marks = [
    group('paper', marksOfFaces(seen.map(({ face }) => face))),
    group('prints', first ? sheetPrint(folded, seen) : []),
    group(step.kind, taskMarks(step, folded, faces, look)),
  ].filter((each) => each.marks.length > 0);
  return {
    name: `step-${number}`,
    heading: words,
    number,
    description: `Step ${number}: ${words}`,
    width: look.width + 2 * around,
    height: look.height + 2 * around,
    ratio,
    marks: moveMarks(marks, around, around),
  };
}

/** What a step adds to the paper that it finds. */
function taskMarks(step: Step, folded: Folded, faces: readonly FlatFace[], look: FlatLook): readonly Mark[] {
  switch (step.kind) {
    case 'fold':
      return foldMarks(step, faces, look);
    case 'tuck':
      return slipMarks(step, faces, look);
    case 'glue':
      return glueMarks(step, faces, look);
    case 'lock':
      return slotMarks(step, faces, look);
    case 'fill':
      return fillMarks(step, folded, faces, look);
    case 'stand':
      return [];
  }
}

/** One arrow for the whole sheet, in the middle of its largest panel, so that a one-way print is laid right. */
function sheetPrint(folded: Folded, seen: readonly Seen[]) {
  const [largest] = regionsOf(seen)
    .map((region) => ({
      region,
      // whole square millimetres, so that rounding does not choose between two panels of one size
      area: Math.round(region.pieces.reduce((sum, piece) => sum + Math.abs(signedArea(piece)), 0)),
    }))
    .toSorted((one, other) => other.area - one.area);
  return largest ? regionBadges([largest.region], folded).filter(({ kind }) => kind === 'arrow') : [];
}
