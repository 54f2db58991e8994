import { contourBounds, overlap } from '../bounds.ts';
import type { Contour } from '../contour.ts';

/** A contour and the number of the operand that it belongs to. */
export interface Part {
  readonly contour: Contour;
  readonly operand: number;
}

/** Contours in groups whose bounds do not meet those of any other group, so that each can be worked on alone. */
export function clustersOf(parts: readonly Part[]): Part[][] {
  const boxes = parts.map(({ contour }) => contourBounds(contour));
  const leader = parts.map((_, index) => index);
  const leaderOf = (index: number): number => {
    let at = index;
    for (let up = leader[at] ?? at; up !== at; up = leader[at] ?? at) at = up;
    return at;
  };
  const byLeft = boxes
    .map((box, index) => ({ box, index }))
    .sort((one, other) => one.box.left - other.box.left);
  for (const [place, { box, index }] of byLeft.entries()) {
    for (let i = place + 1; i < byLeft.length; i++) {
      const other = byLeft[i];
      if (!other || other.box.left > box.right) break;
      if (!overlap(box, other.box)) continue;
      const [one, two] = [leaderOf(index), leaderOf(other.index)];
      leader[Math.max(one, two)] = Math.min(one, two);
    }
  }
  const groups = new Map<number, Part[]>();
  for (const [index, part] of parts.entries()) {
    const group = groups.get(leaderOf(index));
    if (group) group.push(part);
    else groups.set(leaderOf(index), [part]);
  }
  return [...groups.values()];
}
