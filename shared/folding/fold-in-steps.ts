import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { FoldProgram, FoldStep, Step, TuckStep } from '../creases/fold-program.ts';
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
 * sheet, the last the flat result; folds of 90°, glue and contents leave everything where it is.
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
      return folded(form, step, middles);
    case 'tuck':
      return tucked(form, step, pattern);
    case 'glue':
    case 'fill':
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

function folded(form: FlatForm, step: FoldStep, middles: readonly Point[]): FlatForm {
  if (step.angle !== 180) return form;
  const mirror = reflection(step.line);
  const side = Math.sign(distanceFrom(step.line, step.moving));
  const moves = form.lies.map((lies, face) => {
    const middle = middles[face];
    return middle !== undefined && Math.sign(distanceFrom(step.line, move(lies, middle))) === side;
  });
  const rest = form.order.filter((face) => !moves[face]);
  const turned = form.order.filter((face) => moves[face]).toReversed();
  return {
    lies: form.lies.map((lies, face) => (moves[face] ? compose(mirror, lies) : lies)),
    order: step.direction === 'toward' ? [...rest, ...turned] : [...turned, ...rest],
  };
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
