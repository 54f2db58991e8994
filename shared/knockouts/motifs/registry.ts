import { z } from 'zod';
import { unite } from '../../geometry/clip/combine.ts';
import type { Shape } from '../../geometry/contour.ts';
import { moveShape } from '../../geometry/move-shape.ts';
import type { Isometry } from '../../geometry/plane.ts';
import type { Settled } from '../../lengths/length-schema.ts';
import type { ShapeFault } from '../shapes/shape-kind.ts';
import { edge } from './edge.ts';
import { grid } from './grid.ts';
import type { RepeatKind } from './repeat-kind.ts';
import { ring } from './ring.ts';

/** How a motif is repeated, by name and measures. */
export const repeatSpec = z
  .discriminatedUnion('repeat', [edge.schema, grid.schema, ring.schema])
  .meta({ id: 'RepeatSpec' });

/** A repeat's spec, read, with every length in whole nanometres. */
export type RepeatSpec = Settled<z.output<typeof repeatSpec>>;

type AnyKind = Omit<RepeatKind<typeof repeatSpec>, 'schema'>;

/** Every way of repeating: adding one is a file beside this one, and its schema and itself here. */
const kinds: readonly AnyKind[] = Object.freeze([edge, grid, ring]);

function kindOf({ repeat }: RepeatSpec): AnyKind {
  const kind = kinds.find(({ name }) => name === repeat);
  if (!kind) throw new Error(`no repeat is called ${repeat}`);
  return kind;
}

/** What does not go together in a repeat's spec; ask before {@link placesOf}. */
export const repeatFaults = (spec: RepeatSpec): readonly ShapeFault[] => kindOf(spec).faults?.(spec) ?? [];

/** The motions that take a motif from (0, 0) to each of its places; these are spread evenly around (0, 0). */
export const placesOf = (spec: RepeatSpec): Isometry[] => kindOf(spec).places(spec);

/** A motif at all of its places, as one figure: where neighbours overlap they are united. */
export const repeated = (motif: Shape, spec: RepeatSpec): Shape =>
  unite(placesOf(spec).map((place) => moveShape(motif, place)));
