import type { CreasePattern } from '../creases/crease-pattern.ts';
import { cornersOf } from '../drawing/outline.ts';
import { isOuter, signedArea } from '../geometry/area.ts';
import { subtract } from '../geometry/clip/combine.ts';
import type { Contour, Shape } from '../geometry/contour.ts';
import { windingAround } from '../geometry/inside.ts';
import { polygon } from '../geometry/walk.ts';

/** The blank without its openings. */
export interface Paper {
  /** All of it, with what stands loose. */
  readonly shape: Shape;
  /** Without what comes off at the border. */
  readonly kept: Shape;
  /** The outline of the largest piece: the blank's own contour where no opening reaches it. */
  readonly outline: Contour;
  /** Whether an opening reaches the blank's border. */
  readonly reshaped: boolean;
  /** Pieces that come off at the border: then the sheet falls apart. */
  readonly severed: readonly Contour[];
  /** Pieces that stand in openings and fall out. */
  readonly islands: readonly Contour[];
}

/** All that is gone of a blank: its openings, and what comes off at its border with them. */
export function goneFrom(pattern: CreasePattern, openings: Shape, { kept, severed }: Paper): Shape {
  return severed.length === 0 ? openings : subtract([polygon(cornersOf(pattern))], kept);
}

/** Takes the openings out of a blank. */
export function paperWithout(pattern: CreasePattern, openings: Shape): Paper {
  const blank = polygon(cornersOf(pattern));
  const shape = subtract([blank], openings);
  const [outline = blank, ...others] = shape
    .filter(isOuter)
    .toSorted((one, other) => signedArea(other) - signedArea(one));
  const liesIn = (piece: Contour, within: Contour): boolean => windingAround(within, piece.start) !== 0;
  const severed = others.filter((piece) => !liesIn(piece, outline));
  return {
    shape,
    kept: shape.filter((contour) => severed.every((piece) => contour !== piece && !liesIn(contour, piece))),
    outline,
    reshaped: outline !== blank,
    severed,
    islands: others.filter((piece) => liesIn(piece, outline)),
  };
}
