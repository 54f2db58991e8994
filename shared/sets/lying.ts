import type { Point } from '../geometry/plane.ts';
import type { Placed } from '../nesting/nesting.ts';
import type { SetSpec } from './set-spec.ts';
import type { SheetArea } from './sheet-areas.ts';

type Box = Pick<Placed, 'x' | 'y' | 'width' | 'height'>;

/** A sheet as it lies under the tool. */
export interface Lying {
  readonly width: number;
  readonly height: number;
  /** Where a point of the sheet lies. */
  readonly point: (point: Point) => Point;
  /** Where a placed piece lies, and how far it is turned clockwise. */
  readonly place: (placed: Box & Pick<Placed, 'turn'>) => Box & { readonly turn: number };
}

/** Whether a set's sheets lie with their outside up: then all on them is mirrored. */
export const liesMirrored = ({ convention }: Pick<SetSpec, 'convention'>): boolean =>
  convention?.sheetLies === 'outside-up';

/** The same turn and the same mirror as `place` in `shared/drawing/placement.ts` gives the drawing of the sheet. */
export function lying({ width, height, turned }: SheetArea, mirrored: boolean): Lying {
  const across = turned ? height : width;
  const point = ({ x, y }: Point): Point => {
    const [left, top] = turned ? [height - y, x] : [x, y];
    return { x: mirrored ? across - left : left, y: top };
  };
  return {
    width: across,
    height: turned ? width : height,
    point,
    place: (placed) => {
      const one = point(placed);
      const other = point({ x: placed.x + placed.width, y: placed.y + placed.height });
      const turn = placed.turn + (turned ? 90 : 0);
      return {
        x: Math.min(one.x, other.x),
        y: Math.min(one.y, other.y),
        width: Math.abs(other.x - one.x),
        height: Math.abs(other.y - one.y),
        turn: (mirrored ? 720 - turn : turn) % 360,
      };
    },
  };
}
