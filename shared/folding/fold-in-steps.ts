import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram, FoldStep, LockStep, Step, TuckStep } from '../creases/fold-program.ts';
import {
  compose,
  distanceFrom,
  type Isometry,
  identity,
  move,
  type Point,
  reflection,
} from '../geometry/plane.ts';

/** How the sheet lies after some steps, still flat: the spine is not bent. */
export interface FlatForm {
  /** For each face, the motion from the sheet to where it lies. */
  readonly lies: readonly Isometry[];
  /** Indices of the faces from the lowest layer to the one nearest to the viewer. */
  readonly order: readonly number[];
}

/**
 * Does a program's steps one by one and keeps how the sheet lies after each. The first form is the open
 * sheet, the last the flat result; folds of 90°, what is set up, glue and contents leave everything where it is, and
 * locks only put tongues through to the other side.
 * @returns one form more than there are steps
 */
export function foldInSteps(pattern: CreasePattern, program: FoldProgram): readonly FlatForm[] {
  const middles = pattern.faces.map((face) => middleOf(face.vertices, pattern.vertices));
  const forms: FlatForm[] = [
    { lies: pattern.faces.map(() => identity), order: pattern.faces.map((_, index) => index) },
  ];
  for (const step of program.steps) {
    const form = forms.at(-1);
    if (!form) break;
    forms.push(after(form, step, middles, pattern));
  }
  return forms;
}

function after(form: FlatForm, step: Step, middles: readonly Point[], pattern: CreasePattern): FlatForm {
  switch (step.kind) {
    case 'fold':
      return folded(form, step, middles, pattern);
    case 'tuck':
      return tucked(form, step, pattern);
    case 'lock':
      return locked(form, step, pattern);
    case 'glue':
    case 'fill':
    case 'stand':
      return form;
  }
}

/** The mean of a face's corners, which lies inside it. */
export function middleOf(corners: readonly number[], vertices: readonly Point[]): Point {
  let [x, y] = [0, 0];
  for (const corner of corners) {
    x += (vertices[corner]?.x ?? 0) / corners.length;
    y += (vertices[corner]?.y ?? 0) / corners.length;
  }
  return { x, y };
}

function folded(
  form: FlatForm,
  step: FoldStep,
  middles: readonly Point[],
  { faces }: CreasePattern,
): FlatForm {
  if (step.angle !== 180) return form;
  const mirror = reflection(step.line);
  const moves = form.lies.map((lies, face) => isMoved(step, faces[face]?.panel, lies, middles[face]));
  const rest = form.order.filter((face) => !moves[face]);
  const turned = form.order.filter((face) => moves[face]).toReversed();
  return {
    lies: form.lies.map((lies, face) => (moves[face] ? compose(mirror, lies) : lies)),
    order: step.direction === 'toward' ? [...rest, ...turned] : [...turned, ...rest],
  };
}

/** Whether a fold moves a face of a panel that lies so, from the middle of the face on the sheet. */
export function isMoved(
  { line, moving, only }: FoldStep,
  panel: string | undefined,
  lies: Isometry,
  middle: Point | undefined,
): boolean {
  if (middle === undefined || (only && !only.includes(panel ?? ''))) return false;
  return Math.sign(distanceFrom(line, move(lies, middle))) === Math.sign(distanceFrom(line, moving));
}

function tucked(form: FlatForm, step: TuckStep, { faces }: CreasePattern): FlatForm {
  const inPanel = (panel: string) => (face: number) => faces[face]?.panel === panel;
  const slipped = form.order.filter(inPanel(step.panel));
  const rest = form.order.filter((face) => !slipped.includes(face));
  const there = inPanel(step.of);
  const beside = step.to === 'above' ? rest.findLastIndex(there) : rest.findIndex(there);
  const missing = slipped.length === 0 ? step.panel : beside < 0 ? step.of : undefined;
  if (missing !== undefined) throw new Error(`no face lies in the panel ${missing}`);
  const place = step.to === 'above' ? beside + 1 : beside;
  return { lies: form.lies, order: [...rest.slice(0, place), ...slipped, ...rest.slice(place)] };
}

/** Each tongue goes directly beyond the layer with its slot, seen from its tab. */
function locked(form: FlatForm, step: LockStep, pattern: CreasePattern): FlatForm {
  const place = (panel: string) => form.order.findIndex((face) => pattern.faces[face]?.panel === panel);
  return step.locks.reduce(
    (before, { panel, tongue, to }) =>
      tucked(
        before,
        {
          kind: 'tuck',
          name: step.name,
          panel: tongue,
          to: place(panel) > place(to) ? 'below' : 'above',
          of: to,
        },
        pattern,
      ),
    form,
  );
}
