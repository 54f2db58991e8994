import type { Nm } from '../lengths/nanometres.ts';
import { mm } from '../lengths/nanometres.ts';

/** A closed folder, or any box: nanometres. */
export interface Box {
  readonly width: Nm;
  readonly height: Nm;
  readonly thickness: Nm;
}

/** A bow: two loops and two tails. */
export interface Bow {
  /** How far each loop reaches from the knot. */
  readonly loop: Nm;
  readonly tail: Nm;
  /** Width of the ribbon. */
  readonly ribbon: Nm;
}

/** How a ribbon runs: once around the width, once around the height, or both ways, crossed. */
export const ties = ['around the width', 'around the height', 'crossed'] as const;
export type Tie = (typeof ties)[number];

/** A small bow of narrow ribbon; common practice. */
export const smallBow: Bow = Object.freeze({ loop: mm(40), tail: mm(60), ribbon: mm(6) });

/**
 * Length of the ribbon without its bow.
 * Source of the formulas: NRICH, University of Cambridge, on the ribbon around a parcel.
 */
export function wrapLength({ width, height, thickness }: Box, tie: Tie): Nm {
  const around = (side: Nm) => 2 * (side + thickness);
  if (tie === 'around the width') return around(width);
  return tie === 'around the height' ? around(height) : around(width) + around(height);
}

/** What a bow takes: its loops go out and back, and the knot takes six widths; common practice. */
export const bowLength = ({ loop, tail, ribbon }: Bow): Nm => 4 * loop + 2 * tail + 6 * ribbon;

/** Length of a ribbon to cut: around the folder, and a bow. */
export const ribbonLength = (box: Box, tie: Tie, bow: Bow = smallBow): Nm =>
  wrapLength(box, tie) + bowLength(bow);
