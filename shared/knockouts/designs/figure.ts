import { boundsOf, centreOf } from '../../geometry/bounds.ts';
import { offset } from '../../geometry/clip/offset.ts';
import type { Shape } from '../../geometry/contour.ts';
import { moveShape, shift, turn } from '../../geometry/move-shape.ts';
import { anchored } from '../anchored.ts';
import { figureOf } from '../figure-of.ts';
import type { KnockoutOf } from '../knockout-spec.ts';
import { repeated, repeatFaults } from '../motifs/registry.ts';
import { type DesignContext, type Designed, meantBy, onPlace, refused } from './design.ts';

/** A shape, lettering or artwork on a place. */
export const figureDesign = (spec: KnockoutOf<'figure'>, context: DesignContext): Designed =>
  onPlace(spec.on.place, ['on', 'place'], context, (place) => {
    const drawn = figureOf(spec.figure, context);
    if (!drawn.ok)
      return refused(...drawn.faults.map((fault) => ({ ...fault, path: ['figure', ...fault.path] })));
    const wrong = spec.repeat ? repeatFaults(spec.repeat) : [];
    if (wrong.length > 0)
      return refused(...wrong.map((fault) => ({ ...fault, path: ['repeat', ...fault.path] })));
    const all = spec.repeat ? repeated(centred(drawn.shape), spec.repeat) : drawn.shape;
    const turned = moveShape(rounded(all, context.cornerRadius), turn(spec.turn ?? 0));
    const figure = anchored(turned, place, spec.on.anchor, spec.on.offset);
    const narrow = 'shape' in spec.figure && spec.figure.shape === 'ribbon-slot';
    const design = { place, figure, meant: meantBy(spec.through) };
    return { ok: true, design: narrow ? { ...design, narrow } : design };
  });

/** Motifs are repeated about their middles; lettering stands on its baseline. */
function centred(shape: Shape): Shape {
  const { x, y } = centreOf(boundsOf(shape));
  return moveShape(shape, shift(-x, -y));
}

/** A figure whose corners, into it and out of it, are no sharper than a radius; as it is where nothing would be left. */
function rounded(shape: Shape, radius: number): Shape {
  if (radius === 0) return shape;
  const outward = offset(offset(shape, -radius), radius);
  const all = offset(offset(outward, radius), -radius);
  return all.length === 0 ? shape : all;
}
