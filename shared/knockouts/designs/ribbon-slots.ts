import { moveShape, shift, turn } from '../../geometry/move-shape.ts';
import { mm } from '../../lengths/nanometres.ts';
import { anchored } from '../anchored.ts';
import type { KnockoutOf } from '../knockout-spec.ts';
import { outlineOf } from '../shapes/registry.ts';
import { type DesignContext, type Designed, meantBy, onPlace } from './design.ts';

/** Slots are this far apart at least, whatever the ribbon; common practice. */
const leastApart = mm(12);

/** Two slots beside each other, through which a ribbon runs level unless they are turned. */
export const slotsDesign = (spec: KnockoutOf<'ribbon-slots'>, context: DesignContext): Designed =>
  onPlace(spec.on.place, ['on', 'place'], context, (place) => {
    const { on, ribbon, slot, apart = Math.max(2 * ribbon, leastApart) } = spec;
    const lying = outlineOf({ shape: 'ribbon-slot', ribbon, width: slot });
    const one = moveShape(lying, turn(90));
    const pair = [-1, 1].flatMap((side) => moveShape(one, shift((side * apart) / 2, 0)));
    const figure = anchored(moveShape(pair, turn(spec.turn ?? 0)), place, on.anchor, on.offset);
    return { ok: true, design: { place, figure, meant: meantBy(spec.through), narrow: true } };
  });
