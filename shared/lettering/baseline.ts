import { shift, turn } from '../geometry/move-shape.ts';
import { compose, type Isometry, type Point } from '../geometry/plane.ts';
import type { Nm } from '../lengths/nanometres.ts';

/** A line that letters stand on: it takes them from where they stand on a straight one. */
export interface Baseline {
  /**
   * The motion for what stands on the straight baseline y = 0.
   * @param at where the middle of the letter stands along it
   */
  placeAt(at: Nm): Isometry;
  /** Which way is up for what stands at a point, as a vector of length 1. */
  upAt(p: Point): Point;
}

export const straight: Baseline = Object.freeze({
  placeAt: () => shift(0, 0),
  upAt: () => ({ x: 0, y: -1 }),
});

/**
 * A baseline on a circle whose topmost point (bulging up) or lowest point (bulging down) is the middle of the line
 * and stays at y = 0.
 */
export function curved(radius: Nm, bulge: 'up' | 'down', middle: Nm): Baseline {
  const sign = bulge === 'up' ? 1 : -1;
  const centre: Point = { x: middle, y: sign * radius };
  return {
    placeAt: (at) => {
      const degrees = ((sign * (at - middle)) / radius) * (180 / Math.PI);
      return [shift(-at, -centre.y), turn(degrees), shift(centre.x, centre.y)].reduce((first, then) =>
        compose(then, first),
      );
    },
    upAt: (p) => {
      const x = sign * (p.x - centre.x);
      const y = sign * (p.y - centre.y);
      const length = Math.hypot(x, y);
      return length === 0 ? { x: 0, y: -1 } : { x: x / length, y: y / length };
    },
  };
}
