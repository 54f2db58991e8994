import { glueKeepOut } from '../creases/glue-keep-out.ts';
import { boxOf, type FlatFace, TOUCH } from './flat-faces.ts';
import type { Joint } from './joints.ts';
import { isLevel, type PocketPlace } from './pocket-place.ts';
import { mouthOf } from './pockets.ts';
import type { Placed } from './strips.ts';

type Box = Pick<Placed, 'left' | 'right' | 'top' | 'bottom'>;

/** A pocket between flat layers with where its mouth lies, in nanometres of the finished flat form. */
export interface Mouth extends PocketPlace {
  readonly at: number;
  /** The panel behind the contents. */
  readonly back: Box;
}

/** The mouths of those pockets that lie between flat layers. */
export const mouthsOf = (pockets: readonly PocketPlace[], faces: readonly FlatFace[]): readonly Mouth[] =>
  pockets
    .filter(({ walls }) => walls === undefined)
    .map((place) => ({
      ...place,
      at: mouthOf(place, faces),
      back: boxOf(faces.filter(({ panel }) => panel === place.panel).flatMap(({ corners }) => corners)),
    }));

/** Whether something lies along a mouth's line, as far as its pocket reaches, or before or behind that. */
export const liesAcross = ({ mouth, back }: Mouth, box: Box): boolean =>
  isLevel(mouth)
    ? box.left < back.right && back.left < box.right
    : box.top < back.bottom && back.top < box.bottom;

export function isNearMouth(mouth: Mouth, box: Box): boolean {
  const [from, to] = isLevel(mouth.mouth) ? [box.top, box.bottom] : [box.left, box.right];
  return liesAcross(mouth, box) && Math.max(from - mouth.at, mouth.at - to) < glueKeepOut.mouth - TOUCH;
}

/** Whether two layers hang together by a fold at a mouth, so that nothing slides in between them there. */
export function isFoldedAt(
  { at, mouth }: Mouth,
  one: FlatFace,
  other: FlatFace,
  joints: readonly Joint[],
): boolean {
  const across = isLevel(mouth) ? 'y' : 'x';
  return joints.some(
    (joint) =>
      joint.folded &&
      Math.abs(joint.from[across] - at) <= TOUCH &&
      Math.abs(joint.to[across] - at) <= TOUCH &&
      [joint.one.index, joint.other.index].every((face) => face === one.index || face === other.index),
  );
}
