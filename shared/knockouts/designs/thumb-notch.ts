import { ellipse } from '../../geometry/arcs.ts';
import { moveShape, shift } from '../../geometry/move-shape.ts';
import type { Point } from '../../geometry/plane.ts';
import { mm } from '../../lengths/nanometres.ts';
import { styleOf } from '../../styles/registry.ts';
import { extentOf } from '../anchored.ts';
import type { KnockoutOf } from '../knockout-spec.ts';
import { unknownName } from '../unknown-name.ts';
import { type DesignContext, type Designed, onPlace, refused } from './design.ts';

/** 10 mm to 13 mm is common practice. */
const thumb = mm(12);

/** A half circle in the front of a pocket, with its middle on the pocket's mouth. */
export function notchDesign(spec: KnockoutOf<'thumb-notch'>, context: DesignContext): Designed {
  const { pockets } = styleOf(context.folded.plan.spec);
  const pocket = pockets.find(({ name }) => name === spec.pocket);
  if (!pocket)
    return refused(
      unknownName(
        'pocket',
        spec.pocket,
        pockets.map(({ name }) => name),
        ['pocket'],
      ),
    );
  return onPlace(pocket.name, ['pocket'], context, (place) => {
    const { width, height } = extentOf(place);
    const mouths: Readonly<Record<string, Point>> = {
      left: { x: 0, y: height / 2 },
      right: { x: width, y: height / 2 },
      top: { x: width / 2, y: 0 },
      bottom: { x: width / 2, y: height },
    };
    const { x, y } = mouths[pocket.mouth] ?? { x: 0, y: 0 };
    const { left = 0, right = 0, up = 0, down = 0 } = spec.offset ?? {};
    const radius = spec.radius ?? thumb;
    const circle = ellipse({ x: 0, y: 0 }, radius, radius);
    const figure = moveShape([circle], shift(x + right - left, y + down - up));
    const meant = spec.through === 'every-layer' ? 'every-layer' : { panels: pocket.front };
    return { ok: true, design: { place, figure, meant, atEdge: true } };
  });
}
