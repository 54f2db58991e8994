import { type Convex, without } from './convex.ts';
import type { Painted } from './painted.ts';
import type { PagePoint, Paper } from './picture.ts';

/** A face of which something is seen. */
export interface Seen {
  readonly face: Painted;
  /** What no later face covers, without boxes around its openings. */
  readonly pieces: readonly Convex[];
}

const cutOff = (pieces: readonly Convex[], outlines: readonly Convex[]): readonly Convex[] =>
  outlines.reduce((left, outline) => left.flatMap((piece) => without(piece, outline)), pieces);

/** Painted faces without those that later ones cover wholly; through one that is cut, others may be seen. */
export const seenOf = (painted: readonly Painted[]): readonly Seen[] =>
  painted.flatMap((face, index) => {
    const over = painted.slice(index + 1);
    const uncovered = cutOff(
      [face.outline],
      over.map(({ outline }) => outline),
    );
    // boxes around its own openings do not cover a face
    return uncovered.length === 0 && over.every(({ left }) => !left)
      ? []
      : [{ face, pieces: cutOff(uncovered, face.openings ?? []) }];
  });

/** What can be seen of one panel, one paper side and one direction of the print. */
export interface VisibleRegion {
  readonly part: string;
  readonly paper: Paper;
  /** A corner that was folded over: it lies a quarter turn off the rest of its panel. */
  readonly corner: boolean;
  readonly up: PagePoint;
  readonly pieces: readonly Convex[];
}

/** What is seen, by region, in painting order. */
export function regionsOf(seen: readonly Seen[]): readonly VisibleRegion[] {
  const regions = new Map<string, VisibleRegion>();
  for (const { face, pieces } of seen) {
    const { part, paper, corner, up } = face;
    const key = [part, paper, up.x.toFixed(3), up.y.toFixed(3)].join();
    const known = regions.get(key);
    regions.set(key, { part, paper, corner, up, pieces: [...(known?.pieces ?? []), ...pieces] });
  }
  return [...regions.values()];
}
