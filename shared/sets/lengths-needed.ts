import { easilyMeasured } from '../lengths/easily-measured.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { ribbonLength, smallBow } from '../ribbon/ribbon.ts';
import type { CutPiece } from './cut-piece.ts';
import { withSpoilage } from './quantities.ts';
import type { SetSpec } from './set-spec.ts';

/** Ribbon for all kits. */
export interface RibbonNeeded {
  readonly each: Nm;
  readonly count: number;
  /** Nanometres, which may be more than one length may have. */
  readonly total: number;
}

/** The ribbon that a set asks for, each length rounded up; undefined without one. */
export function ribbonNeeded(set: SetSpec, pieces: readonly CutPiece[]): RibbonNeeded | undefined {
  const box = pieces.find(({ name }) => name === set.ribbon?.around)?.closed;
  if (!set.ribbon || !box) return undefined;
  const { tie, loop = smallBow.loop, tail = smallBow.tail, width = smallBow.ribbon } = set.ribbon;
  const each = easilyMeasured(ribbonLength(box, tie, { loop, tail, ribbon: width }), set.measure);
  const count = withSpoilage(set.kits, set.spoilage);
  return { each, count, total: each * count };
}

/** Tape or glue line for all pieces, in nanometres; 0 where none is glued. */
export const tapeNeeded = (pieces: readonly CutPiece[]): number =>
  pieces.reduce((sum, { tape, quantity }) => sum + Math.round(tape) * quantity, 0);
