import type { GlueStrip } from '../creases/fold-program.ts';
import type { FlatFace } from './flat-faces.ts';
import { liesUnder, type Placed } from './strips.ts';

/** Two layers that a strip of glue holds together, where they lie in the finished flat form. */
export interface Bond {
  readonly strip: GlueStrip;
  /** The layer that the strip was put on. */
  readonly owner: FlatFace;
  readonly other: FlatFace;
  /** The strip in the flat form. */
  readonly box: Placed;
}

/** The next layer on the side of a face that a strip is on, anywhere along the strip; its own plate is none. */
export function besideStrip(
  strip: Placed,
  { face: side }: GlueStrip,
  owner: FlatFace,
  faces: readonly FlatFace[],
  plate: readonly number[],
): FlatFace | undefined {
  const up = (side === 'inside') !== owner.turned ? 1 : -1;
  let nearest: FlatFace | undefined;
  for (const face of faces) {
    const above = up * (face.height - owner.height);
    if (above <= 0 || (nearest && above > up * (nearest.height - owner.height))) continue;
    if (plate.length > 1 && plate.includes(face.index)) continue;
    if (liesUnder(strip, face)) nearest = face;
  }
  return nearest;
}

/**
 * Whether one face lies nearer to a viewer than another, where glue holds them on each other; undefined where none does.
 * @param insideSeen whether the viewer sees the inside of a face's paper
 */
export function isNearer(
  bonds: readonly Bond[],
  one: number,
  other: number,
  insideSeen: (face: number) => boolean,
): boolean | undefined {
  for (const { strip, owner, other: held } of bonds) {
    const isOwner = owner.index === one && held.index === other;
    if (!isOwner && !(owner.index === other && held.index === one)) continue;
    // what is held lies on the side of the owner's paper that the strip is on
    const heldIsNearer = (strip.face === 'inside') === insideSeen(owner.index);
    return isOwner ? !heldIsNearer : heldIsNearer;
  }
  return undefined;
}
