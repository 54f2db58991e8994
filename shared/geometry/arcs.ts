import type { Contour, CurveTo } from './contour.ts';
import type { Point } from './plane.ts';

/**
 * Greatest distance of one cubic for a quarter of a circle from the circle, as a share of the radius: 2.73e-4, so
 * 0.0055 mm at a radius of 20 mm; always outside. For an angle θ: 2/27 · sin⁶(θ/4) / cos²(θ/4).
 * Source: M. Goldapp, Approximation of circular arcs by cubic polynomials, CAGD 8, 1991.
 */
export const QUARTER_ARC_ERROR = ((2 / 27) * Math.sin(Math.PI / 8) ** 6) / Math.cos(Math.PI / 8) ** 2;

const DEGREE = Math.PI / 180;

/** An arc of an ellipse whose axes lie along x and y; angles in degrees, from x towards y (clockwise as seen). */
export interface Arc {
  readonly centre: Point;
  readonly radiusX: number;
  readonly radiusY: number;
  readonly from: number;
  /** Less than `from` for an arc that runs the other way. */
  readonly to: number;
}

/** Sine and cosine of degrees, exact at whole quarters. */
function direction(degrees: number): Point {
  const quarter = degrees / 90;
  if (!Number.isInteger(quarter)) return { x: Math.cos(degrees * DEGREE), y: Math.sin(degrees * DEGREE) };
  const turns = ((quarter % 4) + 4) % 4;
  return { x: [1, 0, -1, 0][turns] ?? 0, y: [0, 1, 0, -1][turns] ?? 0 };
}

/** A point of an ellipse whose axes lie along x and y. */
export function arcPoint({ centre, radiusX, radiusY }: Omit<Arc, 'from' | 'to'>, degrees: number): Point {
  const { x, y } = direction(degrees);
  return { x: centre.x + radiusX * x, y: centre.y + radiusY * y };
}

/**
 * An arc as cubics that each span at most a quarter; they touch the arc at both ends and in the middle and keep
 * within {@link QUARTER_ARC_ERROR} × the greater radius of it.
 */
export function arcCurves(arc: Arc): CurveTo[] {
  const { centre, radiusX, radiusY, from, to } = arc;
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / 90 - 1e-9));
  const step = (to - from) / count;
  const reach = (4 / 3) * Math.tan((step * DEGREE) / 4);
  const curves: CurveTo[] = [];
  for (let i = 0; i < count; i++) {
    const start = direction(from + i * step);
    const end = direction(i + 1 === count ? to : from + (i + 1) * step);
    const at = (x: number, y: number): Point => ({ x: centre.x + radiusX * x, y: centre.y + radiusY * y });
    curves.push({
      control: [
        at(start.x - reach * start.y, start.y + reach * start.x),
        at(end.x + reach * end.y, end.y - reach * end.x),
      ],
      to: at(end.x, end.y),
    });
  }
  return curves;
}

/** A whole ellipse, clockwise as seen, of four cubics; it starts at the right. */
export function ellipse(centre: Point, radiusX: number, radiusY: number): Contour {
  const arc = { centre, radiusX, radiusY, from: 0, to: 360 };
  return { start: arcPoint(arc, 0), stretches: arcCurves(arc) };
}
