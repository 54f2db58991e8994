import { partWay } from './motion-arrow.ts';
import type { ArrowMark, PagePoint } from './picture.ts';

/** Length of a motion arrow's head, in millimetres: shorter for a short arrow. */
const headLengthOf = ({ from, to }: ArrowMark): number =>
  Math.min(3.6, 0.3 * Math.hypot(to.x - from.x, to.y - from.y));

const direction = (from: PagePoint, to: PagePoint): PagePoint => {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
};

/** The outline of a straight arrow with shaft and head; its width follows from its length. */
export function solidArrow({ from, to }: Pick<ArrowMark, 'from' | 'to'>): readonly PagePoint[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const { x, y } = direction(from, to);
  const at = (along: number, across: number): PagePoint => ({
    x: from.x + x * along * length - y * across * length,
    y: from.y + y * along * length + x * across * length,
  });
  const [half, shaft, neck] = [0.19, 0.06, 0.55];
  return [
    at(0, -shaft),
    at(neck, -shaft),
    at(neck, -half),
    at(1, 0),
    at(neck, half),
    at(neck, shaft),
    at(0, shaft),
  ];
}

/** Start, control point and end of a motion arrow's shaft, which ends within its head. */
export function shaftOf(arrow: ArrowMark): readonly [PagePoint, PagePoint, PagePoint] {
  const { from, to, by } = arrow;
  const headLength = headLengthOf(arrow);
  const control = by ?? partWay(from, to, 0.5);
  const { x, y } = direction(control, to);
  return [from, control, { x: to.x - x * headLength * 0.8, y: to.y - y * headLength * 0.8 }];
}

/** The three corners of a motion arrow's head. */
export function headOf(arrow: ArrowMark): readonly PagePoint[] {
  const { from, to, by } = arrow;
  const headLength = headLengthOf(arrow);
  const { x, y } = direction(by ?? from, to);
  const back = { x: to.x - x * headLength, y: to.y - y * headLength };
  const half = headLength * 0.45;
  return [to, { x: back.x - y * half, y: back.y + x * half }, { x: back.x + y * half, y: back.y - x * half }];
}
