import type { Lock } from '../creases/lock.ts';
import type { Point } from '../geometry/plane.ts';
import { type FlatFace, shareInside, TOUCH } from './flat-faces.ts';
import type { Joint } from './joints.ts';

/** Two pieces of paper that would have to pass through each other, or a crease bent the wrong way. */
export interface Crossing {
  readonly rule: 'letter' | 'taco-tortilla' | 'taco-taco' | 'tortilla-tortilla';
  readonly message: string;
  readonly faces: readonly number[];
}

/**
 * Everything that a layer order gets wrong, by the conditions of Justin (1997) as named by Bern & Hayes and
 * later writers: a layer must not lie between two that are joined by a fold which it crosses, two folds on
 * one line must not interleave, and layers that run straight on keep their order. A single stacking order is
 * transitive by itself.
 * @param locks tongues that go through a slot of a layer, which is theirs alone to pass
 */
export function crossings(
  joints: readonly Joint[],
  faces: readonly FlatFace[],
  locks: readonly Lock[] = [],
): readonly Crossing[] {
  return [
    ...joints.flatMap(wrongLetter),
    ...joints.flatMap((joint) => cutThrough(joint, faces, locks)),
    ...pairsOnOneLine(joints).flatMap(([one, other]) => interleaved(one, other)),
  ];
}

/** A valley puts the face beyond it above, seen from the inside face; below where the paper lies turned over. */
function wrongLetter({ edge, one, other, folded }: Joint): Crossing[] {
  if (!folded) return [];
  const above = (edge.letter === 'V') !== one.turned;
  if (above === other.height > one.height) return [];
  const message = `the crease between ${one.panel} and ${other.panel} is bent against its letter ${edge.letter}`;
  return [{ rule: 'letter', message, faces: [one.index, other.index] }];
}

function cutThrough(
  { from, to, one, other, folded }: Joint,
  faces: readonly FlatFace[],
  locks: readonly Lock[],
): Crossing[] {
  const low = Math.min(one.height, other.height);
  const high = Math.max(one.height, other.height);
  if (high - low < 2) return [];
  const lock = folded ? undefined : locks.find(({ panel, tongue }) => isOf([panel, tongue], one, other));
  return faces.flatMap((face) => {
    if (face.height <= low || face.height >= high || isApart(from, to, face)) return [];
    if (face.panel === lock?.to) return [];
    const share = shareInside(face, from, to);
    if (!share || (share[1] - share[0]) * Math.hypot(to.x - from.x, to.y - from.y) <= TOUCH) return [];
    const message = `${face.panel} lies between ${one.panel} and ${other.panel}, across the ${folded ? 'fold that joins them' : 'line where they run on into each other'}`;
    const rule = folded ? ('taco-tortilla' as const) : ('tortilla-tortilla' as const);
    return [{ rule, message, faces: [face.index, one.index, other.index] }];
  });
}

const isOf = (panels: readonly string[], ...faces: readonly FlatFace[]): boolean =>
  panels.every((panel) => faces.some((face) => face.panel === panel));

/** Whether a segment lies wholly beside a face's box. */
const isApart = (from: Point, to: Point, { left, right, top, bottom }: FlatFace): boolean =>
  (from.x <= left && to.x <= left) ||
  (from.x >= right && to.x >= right) ||
  (from.y <= top && to.y <= top) ||
  (from.y >= bottom && to.y >= bottom);

function pairsOnOneLine(joints: readonly Joint[]): readonly (readonly [Joint, Joint])[] {
  const pairs: (readonly [Joint, Joint])[] = [];
  // most pairs lie far apart, which their boxes tell at once
  const boxes = joints.map(({ from, to }) => ({
    left: Math.min(from.x, to.x) - TOUCH,
    right: Math.max(from.x, to.x) + TOUCH,
    top: Math.min(from.y, to.y) - TOUCH,
    bottom: Math.max(from.y, to.y) + TOUCH,
  }));
  for (const [index, one] of joints.entries()) {
    const here = boxes[index];
    for (let next = index + 1; next < joints.length; next++) {
      const [other, there] = [joints[next], boxes[next]];
      if (!other || !here || !there) continue;
      if (here.left > there.right || there.left > here.right) continue;
      if (here.top > there.bottom || there.top > here.bottom) continue;
      if (overlap(one, other)) pairs.push([one, other]);
    }
  }
  return pairs;
}

/** Whether two joints lie on each other along more than a point. */
function overlap(one: Joint, other: Joint): boolean {
  const [dx, dy] = [one.to.x - one.from.x, one.to.y - one.from.y];
  const length = Math.hypot(dx, dy);
  const off = (p: Point) => Math.abs(dx * (p.y - one.from.y) - dy * (p.x - one.from.x)) > TOUCH * length;
  if (off(other.from) || off(other.to)) return false;
  const along = (p: Point) => (dx * (p.x - one.from.x) + dy * (p.y - one.from.y)) / length;
  const [a, b] = [along(other.from), along(other.to)];
  return Math.min(length, Math.max(a, b)) - Math.max(0, Math.min(a, b)) > TOUCH;
}

/** On which side of a joint's line, seen along the first one, a face lies: 1 or -1. */
function sideOf({ from, to }: Joint, { corners }: FlatFace): number {
  let sum = 0;
  for (const corner of corners)
    sum += (to.x - from.x) * (corner.y - from.y) - (to.y - from.y) * (corner.x - from.x);
  return Math.sign(sum);
}

function interleaved(one: Joint, other: Joint): Crossing[] {
  const faces = [one.one, one.other, other.one, other.other].map(({ index }) => index);
  const fault = (rule: Crossing['rule'], what: string): Crossing[] => [
    { rule, faces, message: `${namesOf(one)} and ${namesOf(other)} ${what}` },
  ];
  if (one.folded && other.folded) {
    const sameSide = sideOf(one, one.one) === sideOf(one, other.one);
    return sameSide && interleave(one, other) ? fault('taco-taco', 'are folded into each other') : [];
  }
  if (one.folded !== other.folded) {
    const [fold, run] = one.folded ? [one, other] : [other, one];
    const inside = sideOf(fold, run.one) === sideOf(fold, fold.one) ? run.one : run.other;
    return between(fold, inside)
      ? fault('taco-tortilla', 'cross: one is folded where the other runs on')
      : [];
  }
  const [a, b] = [one.one, one.other];
  const [c, d] =
    sideOf(one, other.one) === sideOf(one, a) ? [other.one, other.other] : [other.other, other.one];
  return a.height > c.height === b.height > d.height ? [] : fault('tortilla-tortilla', 'change places');
}

const namesOf = ({ one, other }: Joint): string => `${one.panel} with ${other.panel}`;

const between = ({ one, other }: Joint, { height }: FlatFace): boolean =>
  height > Math.min(one.height, other.height) && height < Math.max(one.height, other.height);

const interleave = (one: Joint, other: Joint): boolean =>
  between(one, other.one) !== between(one, other.other);
