import { type Contour, isCurve, type Shape } from './contour.ts';
import { coordinateAt, turningPoints } from './cubic.ts';
import type { Point } from './plane.ts';
import { walk } from './walk.ts';

/** An upright rectangle, in nanometres. */
export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Span {
  least: number;
  most: number;
}

const reach = (span: Span, value: number): void => {
  if (value < span.least) span.least = value;
  if (value > span.most) span.most = value;
};

/** A curve stays within its control points, so that only one that leaves the span can widen it. */
function reachAlong(span: Span, p0: number, p1: number, p2: number, p3: number): void {
  reach(span, p3);
  if (Math.min(p1, p2) >= span.least && Math.max(p1, p2) <= span.most) return;
  for (const t of turningPoints(p0, p1, p2, p3)) reach(span, coordinateAt(p0, p1, p2, p3, t));
}

/** The smallest upright rectangle around contours; exact for curves. Throws where there is no contour. */
export function boundsOf(shape: Shape): Bounds {
  if (shape.length === 0) throw new Error('nothing has no bounds');
  const across: Span = { least: Infinity, most: -Infinity };
  const along: Span = { least: Infinity, most: -Infinity };
  for (const contour of shape) {
    reach(across, contour.start.x);
    reach(along, contour.start.y);
    walk(contour, (from, stretch) => {
      const { to } = stretch;
      if (isCurve(stretch)) {
        const [c, d] = stretch.control;
        reachAlong(across, from.x, c.x, d.x, to.x);
        reachAlong(along, from.y, c.y, d.y, to.y);
      } else {
        reach(across, to.x);
        reach(along, to.y);
      }
    });
  }
  return { left: across.least, top: along.least, right: across.most, bottom: along.most };
}

export const contourBounds = (contour: Contour): Bounds => boundsOf([contour]);

/** Whether two rectangles share a point; touching counts. */
export const overlap = (one: Bounds, other: Bounds): boolean =>
  one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom;

export const centreOf = ({ left, top, right, bottom }: Bounds): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
});

/** The corners of a rectangle, clockwise as seen, from its upper left one. */
export const boxCorners = ({ left, top, right, bottom }: Bounds): readonly Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];
