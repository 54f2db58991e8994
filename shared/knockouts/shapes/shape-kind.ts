import type { z } from 'zod';
import type { Shape } from '../../geometry/contour.ts';
import { lengthBetween, type Settled } from '../../lengths/length-schema.ts';
import { mm } from '../../lengths/nanometres.ts';

/** What does not go together in a shape's spec, and what to do about it. */
export interface ShapeFault {
  /** The member at fault, from the shape's own spec. */
  readonly path: readonly string[];
  readonly message: string;
  readonly remedy: string;
}

/** A kind of shape: how it is asked for and how it is drawn. Lengths in a spec are whole nanometres once it is read. */
export interface ShapeKind<Schema extends z.ZodType> {
  readonly name: string;
  /** A strict object with the literal `shape`; each member on its own is bounded here. */
  readonly schema: Schema;
  /** Conditions between members, which can only be judged once their units are settled; default: there are none. */
  faults?(spec: Settled<z.output<Schema>>): readonly ShapeFault[];
  /** The outline of a spec without faults, upright, the middle of its bounds on (0, 0). */
  outline(spec: Settled<z.output<Schema>>): Shape;
}

/** One kind of shape, with its types inferred. */
export const shapeKind = <Schema extends z.ZodType>(kind: ShapeKind<Schema>): ShapeKind<Schema> =>
  Object.freeze(kind);

/** The smallest shape that a blade or a laser can follow, and the largest that a sheet for home cutters holds. */
const SMALLEST = mm(1);
const LARGEST = mm(600);

/** A measure across a whole shape. */
export const extent = (description: string) =>
  lengthBetween(SMALLEST, LARGEST).meta({
    description: `${description}, 1 mm to 600 mm.`,
    examples: ['40 mm', '1 1/2 in'],
  });
