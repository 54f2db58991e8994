import type { CreasePattern } from '../creases/crease-pattern.ts';
import type { GlueStep, GlueStrip, Step } from '../creases/fold-program.ts';
import { glueKeepOut } from '../creases/glue-keep-out.ts';
import { move, type Point } from '../geometry/plane.ts';
import type { Neighbours } from './faces-across.ts';
import { boxOf, type FlatFace, flatFaces, TOUCH } from './flat-faces.ts';
import type { FlatForm } from './fold-in-steps.ts';
import type { Joint } from './joints.ts';
import type { PocketPlace } from './pockets.ts';

/** A folded sheet as the check of its glue needs it. */
export interface Gluable {
  readonly pattern: CreasePattern;
  readonly neighbours: Neighbours;
  /** How it lies before each step, and at last. */
  readonly forms: readonly FlatForm[];
  /** Of the last form, and the joints between them. */
  readonly faces: readonly FlatFace[];
  readonly joints: readonly Joint[];
}

/** A pocket with where its mouth lies. */
interface Mouth extends PocketPlace {
  readonly x: number;
}

/**
 * Where glue would not hold what it is for, or hold what it must not: each strip lies between the two layers that
 * it names when it is put on and still does in the finished form, keeps its distances from edges, scores and
 * mouths, and joins no pocket's back with its front.
 */
export function glueFaults(
  steps: readonly Step[],
  pockets: readonly PocketPlace[],
  sheet: Gluable,
): readonly string[] {
  const mouths = pockets.map((place): Mouth => {
    const cover = sheet.faces.filter(({ panel }) => panel === place.panel);
    return { ...place, x: boxOf(cover.flatMap(({ corners }) => corners))[place.mouth] };
  });
  return steps.flatMap((step, index) => {
    const form = sheet.forms[index];
    if (step.kind !== 'glue' || !form) return [];
    const faces = form === sheet.forms.at(-1) ? sheet.faces : flatFaces(sheet.pattern, form);
    return step.strips.flatMap((strip) => {
      const fault = faultOf(strip, step, faces, sheet, mouths);
      return fault === undefined ? [] : [`${step.name}, on ${strip.panel}: ${fault}`];
    });
  });
}

/** The first thing that is wrong with a strip. */
function faultOf(
  strip: GlueStrip,
  { width }: GlueStep,
  faces: readonly FlatFace[],
  sheet: Gluable,
  mouths: readonly Mouth[],
): string | undefined {
  const sides = [strip.right - strip.left, strip.bottom - strip.top];
  if (!sides.every((side) => side > 0)) return 'there is no room for a strip';
  if (!sides.some((side) => Math.abs(side - width) <= TOUCH))
    return 'the strip is not as wide as is said of it';
  const owner = faces.find((face) => face.panel === strip.panel && isClear(face, placed(strip, face), sheet));
  if (!owner) return 'the strip comes too near to an edge or a score, or lies elsewhere';
  const there = placed(strip, owner);
  const other = besideStrip(there, strip, owner, faces);
  if (other?.panel !== strip.to) return `it sticks to ${other?.panel ?? 'nothing'} instead of ${strip.to}`;
  if (!isClear(other, there, sheet)) return `it comes too near to an edge or a score of ${strip.to}`;
  const [ownerLast, otherLast] = [sheet.faces[owner.index], sheet.faces[other.index]];
  if (!ownerLast || !otherLast) return 'its panels are not there any more';
  const atLast = placed(strip, ownerLast);
  if (besideStrip(atLast, strip, ownerLast, sheet.faces) !== otherLast)
    return `it does not stay on ${strip.to}`;
  for (const pocket of mouths) {
    if (shuts(pocket, strip)) return `it glues the ${pocket.name} shut`;
    const gap = Math.max(atLast.left - pocket.x, pocket.x - atLast.right);
    if (gap < glueKeepOut.mouth - TOUCH && !isFoldedAt(pocket.x, owner, other, sheet.joints))
      return `it comes too near to the mouth of the ${pocket.name}`;
  }
  return undefined;
}

/** Where a strip lies when its face lies somewhere: upright still, as folds turn it by whole quarters. */
interface Placed {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly corners: readonly Point[];
}

function placed({ left, right, top, bottom }: GlueStrip, { lies }: FlatFace): Placed {
  const corners = [
    move(lies, { x: left, y: top }),
    move(lies, { x: right, y: top }),
    move(lies, { x: right, y: bottom }),
    move(lies, { x: left, y: bottom }),
  ];
  return { ...boxOf(corners), corners };
}

/** Whether a strip lies in a face, far enough from the face's free edges and scores. */
function isClear(face: FlatFace, strip: Placed, { pattern, neighbours }: Gluable): boolean {
  const across = neighbours[face.index] ?? [];
  return (pattern.faces[face.index]?.vertices ?? []).every((vertex, index) => {
    const isScore = across.some(({ from }) => from === vertex);
    const [least] = depths(face, index, strip);
    return least >= glueKeepOut[isScore ? 'score' : 'edge'] - TOUCH;
  });
}

/** The least and the greatest distance of a strip's corners from an edge of a face, positive on the face's side. */
function depths({ corners, turned }: FlatFace, edge: number, strip: Placed): readonly [number, number] {
  const [p, q] = [corners[edge], corners[edge + 1] ?? corners[0]];
  if (!p || !q) return [Number.NaN, Number.NaN];
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const toward = (turned ? -1 : 1) / Math.hypot(dx, dy);
  let [least, most] = [Infinity, -Infinity];
  for (const { x, y } of strip.corners) {
    const depth = toward * (dx * (y - p.y) - dy * (x - p.x));
    if (depth < least) least = depth;
    if (depth > most) most = depth;
  }
  return [least, most];
}

/** The next layer on the side of a face that a strip is on, anywhere along the strip. */
function besideStrip(
  strip: Placed,
  { face: side }: GlueStrip,
  owner: FlatFace,
  faces: readonly FlatFace[],
): FlatFace | undefined {
  const up = (side === 'inside') !== owner.turned ? 1 : -1;
  let nearest: FlatFace | undefined;
  for (const face of faces) {
    const above = up * (face.height - owner.height);
    if (above <= 0 || (nearest && above > up * (nearest.height - owner.height))) continue;
    if (liesUnder(strip, face)) nearest = face;
  }
  return nearest;
}

/** Whether a strip and a face overlap: neither the strip's box nor an edge of the face parts them. */
const liesUnder = (strip: Placed, face: FlatFace): boolean =>
  strip.left < face.right - TOUCH &&
  face.left < strip.right - TOUCH &&
  strip.top < face.bottom - TOUCH &&
  face.top < strip.bottom - TOUCH &&
  face.corners.every((_, edge) => depths(face, edge, strip)[1] > TOUCH);

function shuts({ panel, behind, front }: PocketPlace, { panel: one, to: other }: GlueStrip): boolean {
  const isBack = (name: string) => name === panel || behind.includes(name);
  return (isBack(one) && front.includes(other)) || (front.includes(one) && isBack(other));
}

/** Whether two layers hang together by a fold at a mouth, so that nothing slides in between them there. */
const isFoldedAt = (x: number, one: FlatFace, other: FlatFace, joints: readonly Joint[]): boolean =>
  joints.some(
    (joint) =>
      joint.folded &&
      Math.abs(joint.from.x - x) <= TOUCH &&
      Math.abs(joint.to.x - x) <= TOUCH &&
      [joint.one.index, joint.other.index].every((face) => face === one.index || face === other.index),
  );
