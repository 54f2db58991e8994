import type { CreasePattern } from '../creases/crease-pattern.ts';
import { type FoldProgram, locksOf } from '../creases/fold-program.ts';
import { cornersOf } from '../drawing/outline.ts';
import { boxCorners } from '../geometry/bounds.ts';
import type { Contour, Shape } from '../geometry/contour.ts';
import { isInside } from '../geometry/inside.ts';
import { polygon, reverse } from '../geometry/walk.ts';
import type { Knockouts } from './placed.ts';

/** The slots of a program's locks, as openings of the open blank. */
export const slotsOf = (program: FoldProgram): Shape =>
  locksOf(program).map(({ slot }) => polygon(boxCorners(slot)));

/**
 * A blank with the slots of its locks and without any other opening; undefined where it has none. A slot lies within one
 * face, as its proof says.
 */
export function openSlots(pattern: CreasePattern, program: FoldProgram): Knockouts | undefined {
  const openings = slotsOf(program);
  if (openings.length === 0) return undefined;
  const outline = polygon(cornersOf(pattern));
  const without = (whole: Contour, slots: Shape): Shape => [whole, ...slots.map(reverse)];
  const shape = without(outline, openings);
  const paper = { shape, kept: shape, outline, reshaped: false, severed: [], islands: [] };
  const facesLeft = new Map<number, Shape>();
  for (const [index, { vertices }] of pattern.faces.entries()) {
    const face = polygon(vertices.flatMap((corner) => pattern.vertices[corner] ?? []));
    const own = openings.filter(({ start }) => isInside([face], start));
    if (own.length > 0) facesLeft.set(index, without(face, own));
  }
  return { list: [], openings, paper, facesLeft, findings: [] };
}
