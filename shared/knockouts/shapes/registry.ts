import { z } from 'zod';
import { boundsOf } from '../../geometry/bounds.ts';
import type { Shape } from '../../geometry/contour.ts';
import type { Settled } from '../../lengths/length-schema.ts';
import { arch } from './arch.ts';
import { circle } from './circle.ts';
import { heart } from './heart.ts';
import { oval } from './oval.ts';
import { regularPolygon } from './regular-polygon.ts';
import { ribbonSlot } from './ribbon-slot.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import { scallopedCircle } from './scalloped-circle.ts';
import { scallopedRectangle } from './scalloped-rectangle.ts';
import type { ShapeFault, ShapeKind } from './shape-kind.ts';
import { star } from './star.ts';
import { tag } from './tag.ts';
import { thumbNotch } from './thumb-notch.ts';

/** Every kind of shape: adding one is a file beside this one and a line here. */
const kinds = [
  circle,
  oval,
  roundedRectangle,
  regularPolygon,
  star,
  heart,
  scallopedCircle,
  scallopedRectangle,
  arch,
  tag,
  ribbonSlot,
  thumbNotch,
] as const;

type SchemasOf<Kinds> = {
  readonly [Key in keyof Kinds]: Kinds[Key] extends ShapeKind<infer Schema> ? Schema : never;
};

// map() forgets which schema stands where; the union's type needs each of them
const schemas = kinds.map(({ schema }) => schema) as unknown as SchemasOf<typeof kinds>;

/** A shape to cut out, by its name and measures. */
export const shapeSpec = z.discriminatedUnion('shape', schemas).meta({ id: 'ShapeSpec' });

/** A shape's spec, read, with every length in whole nanometres. */
export type ShapeSpec = Settled<z.output<typeof shapeSpec>>;

type AnyKind = Omit<ShapeKind<typeof shapeSpec>, 'schema'>;

/** Every kind of shape, in the order in which they are listed. */
export const shapes: readonly AnyKind[] = Object.freeze(kinds);

function kindOf({ shape }: ShapeSpec): AnyKind {
  const kind = shapes.find(({ name }) => name === shape);
  if (!kind) throw new Error(`no shape is called ${shape}`);
  return kind;
}

/** What does not go together in a shape's spec; ask before {@link outlineOf}. */
export const shapeFaults = (spec: ShapeSpec): readonly ShapeFault[] => kindOf(spec).faults?.(spec) ?? [];

/** The outline of a shape without faults, upright, the middle of its bounds on (0, 0), in nanometres. */
export const outlineOf = (spec: ShapeSpec): Shape => kindOf(spec).outline(spec);

/** Width and height of a shape as it stands upright, in nanometres. */
export function naturalSize(spec: ShapeSpec): { readonly width: number; readonly height: number } {
  const { left, top, right, bottom } = boundsOf(outlineOf(spec));
  return { width: right - left, height: bottom - top };
}
