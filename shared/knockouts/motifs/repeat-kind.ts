import type { z } from 'zod';
import type { Isometry } from '../../geometry/plane.ts';
import type { Settled } from '../../lengths/length-schema.ts';
import type { ShapeFault } from '../shapes/shape-kind.ts';

/** A way of repeating a motif. Lengths in a spec are whole nanometres once it is read. */
export interface RepeatKind<Schema extends z.ZodType> {
  readonly name: string;
  /** A strict object with the literal `repeat`; each member on its own is bounded here. */
  readonly schema: Schema;
  /** Conditions between members, which can only be judged once their units are settled; default: there are none. */
  faults?(spec: Settled<z.output<Schema>>): readonly ShapeFault[];
  /** The motions that take the motif from (0, 0) to each of its places, around (0, 0). */
  places(spec: Settled<z.output<Schema>>): Isometry[];
}

/** One way of repeating, with its types inferred. */
export const repeatKind = <Schema extends z.ZodType>(kind: RepeatKind<Schema>): RepeatKind<Schema> =>
  Object.freeze(kind);

/** The most motifs in one repeat; what a home cutter still cuts in minutes. */
export const MOST_MOTIFS = 400;

/** The places from 0 to count − 1 of a row that is centred on 0, `pitch` apart. */
export const centredRow = (count: number, pitch: number): number[] =>
  Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * pitch);
